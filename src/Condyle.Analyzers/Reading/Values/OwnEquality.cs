namespace Condyle.Analyzers.Reading;

/// <summary>Equality that asks the user's own types, where they say when two of them are equal. The code has looked at what is compared by it.</summary>
internal sealed class OwnEquality(Machine machine) : KnownEquality
{
    protected override bool? AreEqual(ObjectValue a, object b)
    {
        if (machine.Program.EqualsOf(a.Type) is not { } body)
            return null;
        var above = machine.Program.RecordThatSaysEqualityOf(a.Type);
        if (above is not null && (b is not ObjectValue other || !machine.Program.IsOfType(other.Type.Id, a.Type.Id)))
            return false;
        var isEqual = machine.Decide(machine.Call(body, a, [b])) is bool known
            ? known
            : throw new AnswerIsOpen($"whether two '{a.Type.Name}' are equal isn't known");
        return isEqual && (above is null || MoreIsEqual(a, (ObjectValue)b, above));
    }

    // What a record adds to the one above is compared part by part.
    private bool MoreIsEqual(ObjectValue a, ObjectValue b, UserType above)
    {
        for (var i = 0; i < a.Fields.Length; i++)
        {
            var (x, y) = (a.Fields[i], b.Fields[b.Type.IndexOf(a.Type.Fields[i])]);
            if (above.IndexOf(a.Type.Fields[i]) < 0 && !(IsKnown(x) && IsKnown(y) ? Equals(x, y) : throw new AnswerIsOpen($"whether two '{a.Type.Name}' are equal isn't known")))
                return false;
        }

        return true;
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
