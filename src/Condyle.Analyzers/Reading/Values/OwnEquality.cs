namespace Condyle.Analyzers.Reading;

/// <summary>Equality that asks the user's own types, where they say when two of them are equal.</summary>
internal sealed class OwnEquality(Machine machine) : KnownEquality
{
    protected override bool? AreEqual(ObjectValue a, object b)
    {
        if (machine.Program.EqualsOf(a.Type) is not { } body)
            return null;
        return machine.Decide(machine.Call(body, a, [b])) is bool known
            ? known
            : throw new ReadingStopped($"whether two '{a.Type.Name}' are equal isn't known");
    }

    // Equal objects must have the same code, and what the user's own code would be doesn't show: all get the same.
    protected override int? HashOf(ObjectValue value) => machine.Program.EqualsOf(value.Type) is null ? null : 1;
}
