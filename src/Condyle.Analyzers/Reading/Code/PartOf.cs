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
        var known = "";
        int? length = whole switch
        {
            ArrayValue array => array.Items.Length,
            ListValue { IsOpen: false } list => list.Items.Count,
            TextValue text when text.TryKnown(out known) => known.Length,
            _ => null,
        };
        if (length is not { } count)
            return null;
        if (part is not RangeValue range)
            return Arithmetic.AsIndex(part, count) is { } at ? Item(whole!, known, Checked(at, count - 1)) : null;
        var start = Checked(range.Start.Of(count), count);
        var taken = Checked(range.End.Of(count), count) - start;
        if (taken < 0)
            throw OutOfRange();
        Budget.Current.Make(taken);
        return whole switch
        {
            TextValue text => new TextValue(known.Substring(start, taken), [], text.Origins),
            ListValue list => new ListValue(list.Kind, list.Items.GetRange(start, taken)),
            _ => new ArrayValue([.. ((ArrayValue)whole!).Items.Skip(start).Take(taken)]),
        };
    }

    private static object? Item(object whole, string known, int at) => whole switch
    {
        ArrayValue array => array.Items[at],
        ListValue list => list.Items[at],
        _ => known[at],
    };

    private static int Checked(int index, int most) => index >= 0 && index <= most ? index : throw OutOfRange();

    private static ThrownByCode OutOfRange() => new("System.ArgumentOutOfRangeException", "There is no such item.");
}
