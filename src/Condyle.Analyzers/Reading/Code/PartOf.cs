namespace Condyle.Analyzers.Reading;

/// <summary>An item from the end, or a stretch, of the array, span, list or text on the stack.</summary>
internal sealed class PartOf(TypeKey type) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var part = frame.Pop();
        var whole = frame.Pop();
        machine.Calls.Observe(whole);
        var taken = Take(whole, part);
        if (taken is null)
            machine.Lost.Add(whole);
        frame.Push(taken ?? Opens.Of(frame.Resolve(type), machine));
    }

    /// <summary>How many items the value on the stack has; none when that isn't known.</summary>
    public static int? CountOf(object? whole) => whole switch
    {
        ObjectValue { Inline: { } items } => items.Length,
        ObjectValue { Collection: ListValue { IsOpen: false } list } => list.Count,
        IStretch items => items.Length,
        ListValue { IsOpen: false } list => list.Count,
        TextValue text when text.TryKnown(out var known) => known.Length,
        _ => null,
    };

    public static object? Take(object? whole, object? part)
    {
        Fields.ThrowIfNull(whole);
        whole = whole is ObjectValue own ? own.Inline ?? own.Collection : whole;
        if (CountOf(whole) is not { } count)
            return null;
        if (part is not RangeValue range)
            return Arithmetic.AsIndex(part, count) is { } at ? Item(whole!, at, count) : null;
        var start = range.Start.Of(count);
        var taken = range.End.Of(count) - start;
        if (start < 0 || taken < 0 || (start + taken > count && whole is not ListValue { TypeName: not ImmutableNames.Array }))
            throw Making.OutOfRange();
        Making.Stretch(start, taken, count);
        Budget.Current.Make(taken);
        return whole switch
        {
            TextValue text => new TextValue(text.ToString().Substring(start, taken), [], text.Origins),
            ListValue list => new ListValue(list.List.GetRange(start, taken), list.TypeName) { IsFixed = list.IsFixed },
            SpanValue span => new SpanValue(span.Items, span.Start + start, taken),
            ArrayValue array => new ArrayValue([.. array.Items.Skip(start).Take(taken)], null, array.ItemType),
            _ => null,
        };
    }

    private static object? Item(object whole, int at, int count) => whole switch
    {
        ListValue list => list.List[ListCalls.Place(list, at)],
        _ when at < 0 || at >= count => throw Making.OutOfArray(),
        IStretch items => items.Items[items.Start + at],
        _ => whole.ToString()![at],
    };
}

/// <summary>Puts the number of items of what lies on the stack in its place.</summary>
internal sealed class CountOf : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var whole = frame.Pop();
        machine.Calls.Observe(whole);
        frame.Push(PartOf.CountOf(whole) is { } count ? count : new OpenValue(new TypeKey("int", TypeShape.Int32)));
    }
}

/// <summary>Turns an index below a number of items into the index from the start.</summary>
internal sealed class OffsetIn : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var (count, part) = (frame.Pop(), frame.Pop());
        frame.Push(count is int items && Arithmetic.AsIndex(part, items) is { } at ? at : new OpenValue(new TypeKey("int", TypeShape.Int32)));
    }
}

/// <summary>Turns a range below a number of items into its start and its length.</summary>
internal sealed class StretchIn : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var (count, part) = (frame.Pop(), frame.Pop());
        var known = part is RangeValue range && count is int items ? (Start: range.Start.Of(items), End: range.End.Of(items)) : ((int Start, int End)?)null;
        frame.Push(known is { } stretch ? stretch.Start : new OpenValue(new TypeKey("int", TypeShape.Int32)));
        frame.Push(known is { } ends ? ends.End - ends.Start : new OpenValue(new TypeKey("int", TypeShape.Int32)));
    }
}

/// <summary>Stores the value on the stack as the item at the index below it, of the span or list below that.</summary>
internal sealed class StorePart : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var value = frame.Pop();
        var index = frame.Pop();
        var whole = frame.Pop() is var held && held is ObjectValue { Collection: { } collection } ? collection : held;
        if (index is IndexValue fromEnd && PartOf.CountOf(whole) is { } count)
            index = fromEnd.Of(count);
        if (Elements.CellOf(whole, index) is { } cell)
            machine.Write(cell.Items, cell.Index, value);
        else
            FrameworkTable.Find(ListValue.Type, "set_Item")!.Call(new Invocation(machine, new MethodRef("set_Item", ListValue.Type, "set_Item"), [whole, index, value]));
    }
}
