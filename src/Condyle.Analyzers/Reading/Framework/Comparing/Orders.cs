namespace Condyle.Analyzers.Reading;

/// <summary>The orders that comparers stand for.</summary>
internal static class Orders
{
    /// <summary>The order of <c>Comparer&lt;T&gt;.Default</c>.</summary>
    public static IComparer<object?> Default(Machine machine) => new DefaultOrder(machine);

    /// <summary>The order of a comparer, a comparison or nothing at all, which stands for the default one.</summary>
    public static IComparer<object?> Of(object? comparer, Machine machine) => comparer switch
    {
        null => Default(machine),
        ComparerValue own => own.Order(machine),
        FunctionValue comparison => new GivenOrder((a, b) => comparison.Invoke(machine, a, b), machine),
        ObjectValue own when OwnMembers.Find(own, OwnMembers.Compare, machine) is { } body => new GivenOrder((a, b) => machine.Call(body, own, [a, b]), machine),
        _ => throw new AnswerIsOpen("how things are ordered isn't known"),
    };

    private sealed class GivenOrder(Func<object?, object?, object?> compare, Machine machine) : IComparer<object?>
    {
        public int Compare(object? a, object? b) => machine.Decide(compare(a, b)) is int order ? order : throw new SequenceIsOpen("in which order two values stand isn't known");
    }
}

/// <summary>The order of plain values, of tuples by their items, and of the user's own types by their own code.</summary>
internal sealed class DefaultOrder(Machine machine) : IComparer<object?>
{
    public int Compare(object? a, object? b)
    {
        using var level = Budget.Current.Deeper();
        if (a is null || b is null)
            return a is null ? b is null ? 0 : -1 : 1;
        machine.Calls.Observe(a);
        machine.Calls.Observe(b);
        switch (EnumValue.NumberOf(a), EnumValue.NumberOf(b))
        {
            case (TextValue x, TextValue y):
                return x.TryKnown(out var left) && y.TryKnown(out var right) && Cultures.Order(left, right) is { } order
                    ? order
                    : throw new AnswerIsOpen("in which order texts stand depends on the culture");
            case (TupleValue { IsPair: false } x, TupleValue { IsPair: false } y) when x.Items.Length == y.Items.Length:
                return x.Items.Zip(y.Items, Compare).FirstOrDefault(order => order != 0);
            case (ObjectValue own, _) when OwnMembers.Find(own, OwnMembers.CompareTo, machine) is { } body:
                return Answer(machine.Call(body, own, [b]));
            case (_, ObjectValue own) when a is not OpenValue && OwnMembers.Find(own, OwnMembers.CompareTo, machine) is { } body:
                return -Answer(machine.Call(body, own, [a]));
            case (OpenValue, _) or (_, OpenValue):
                throw new AnswerIsOpen("in which order two values stand isn't known");
            case (IComparable x, { } y) when x.GetType() == y.GetType():
                return x.CompareTo(y);
            default:
                throw new ThrownByCode("System.ArgumentException", "Neither of two values can be compared.");
        }
    }

    private int Answer(object? order) => machine.Decide(order) is int known ? known : throw new SequenceIsOpen("in which order two values stand isn't known");
}
