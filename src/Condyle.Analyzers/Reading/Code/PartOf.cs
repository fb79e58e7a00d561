namespace Condyle.Analyzers.Reading;

/// <summary>An item from the end, or a stretch, of the array, list or text on the stack.</summary>
internal sealed class PartOf(TypeKey type) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var part = frame.Pop();
        var whole = frame.Pop();
        machine.Calls.Observe(whole);
        frame.Push(Take(whole, part) ?? Opens.Of(type, machine));
    }

    private static object? Take(object? whole, object? part)
    {
        Fields.ThrowIfNull(whole);
        object?[]? items = whole switch
        {
            ArrayValue array => array.Items,
            ListValue { IsOpen: false } list => [.. list.Items],
            TextValue text when text.TryKnown(out var known) => [.. known.Select(character => (object?)character)],
            _ => null,
        };
        if (items is null)
            return null;
        if (part is not RangeValue range)
            return Arithmetic.AsIndex(part, items.Length) is { } at ? items[Checked(at, items.Length - 1)] : null;
        var start = Checked(range.Start.Of(items.Length), items.Length);
        var end = Checked(range.End.Of(items.Length), items.Length);
        if (end < start)
            throw OutOfRange();
        var taken = items.Skip(start).Take(end - start);
        return whole switch
        {
            TextValue text => new TextValue(string.Concat(taken), [], text.Origins),
            ListValue list => new ListValue(list.Kind, taken),
            _ => new ArrayValue([.. taken]),
        };
    }

    private static int Checked(int index, int most) => index >= 0 && index <= most ? index : throw OutOfRange();

    private static ThrownByCode OutOfRange() => new("System.ArgumentOutOfRangeException", "There is no such item.");
}
