namespace Condyle.Analyzers.Reading;

/// <summary>Equality that asks the user's own types, where they say when two of them are equal. The code has looked at what is compared by it.</summary>
internal sealed class OwnEquality(Machine machine) : KnownEquality
{
    protected override bool? AreEqual(ObjectValue a, object b)
    {
        if (machine.Program.EqualsOf(a.Type) is not { } body)
            return null;
        return machine.Decide(machine.Call(body, a, [b])) is bool known
            ? known
            : throw new AnswerIsOpen($"whether two '{a.Type.Name}' are equal isn't known");
    }

    // A hash that isn't known, such as one made of texts, tells nothing apart.
    protected override int? HashOf(ObjectValue value) => OwnMembers.Find(value, OwnMembers.Hash, machine) is { } body
        ? machine.Decide(machine.Call(body, value, [])) is int known ? known : 1
        : null;

    protected override bool AreEqual(TextValue a, TextValue b) => base.AreEqual(Observed(a), Observed(b));

    protected override int HashOf(TextValue text) => base.HashOf(Observed(text));

    protected override bool OthersAreEqual(object a, object b) => base.OthersAreEqual(Observed(a), Observed(b));

    protected override int HashOfOther(object value) => base.HashOfOther(Observed(value));

    private T Observed<T>(T value)
    {
        machine.Calls.Observe(value);
        return value;
    }
}
