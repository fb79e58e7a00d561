namespace Condyle.Analyzers.Reading;

/// <summary>What <c>Array</c> does with arrays of one dimension.</summary>
internal static class Arrays
{
    private const string Type = "System.Array";

    public static void Register()
    {
        var array = new TypeMembers<ArrayValue>(Type);
        foreach (var name in new[] { "get_Length", "get_Count" })
            array.Asks(name, (own, _) => own.Items.Length);
        array.Asks("get_LongLength", (own, _) => (long)own.Items.Length);
        array.Asks("get_Item", (own, call) => own.Items[Place(own, ListCalls.Index(call, own.Items.Length))]);
        array.Changes("set_Item", (own, call) => Write(call, own, Making.Place(ListCalls.Index(call, own.Items.Length), own.Items.Length), call[2]));
        array.Asks("get_IsReadOnly", (_, _) => true);
        array.Asks("get_IsFixedSize", (_, _) => true);
        array.Asks("GetValue", (own, call) => call.Count == 2 ? own.Items[Index(call.Whole(1), own)] : throw call.Unknown());
        array.Changes("SetValue", (own, call) => call.Count == 3 ? Write(call, own, Index(call.Whole(2), own), call[1]) : throw call.Unknown());
        Searching.Register(array, own => own.Items);
        foreach (var refused in new[] { "Add", "Insert", "Remove", "RemoveAt" })
            array.Asks(refused, (_, _) => throw new ThrownByCode("System.NotSupportedException", "An array doesn't grow or shrink."));
        array.Asks("get_Rank", (own, _) => own.Lengths.Length);
        array.Asks("GetLength", (own, call) => Dimension(own, call));
        array.Asks("GetUpperBound", (own, call) => Dimension(own, call) - 1);
        array.Asks("GetLowerBound", (own, call) => Dimension(own, call) * 0);
        array.Asks("Clone", (own, _) => new ArrayValue([.. own.Items.Select(ValueCopies.Of)], own.Lengths, own.ItemType));
        Statics();
    }

    // Asked as an interface, an array refuses an index as a list does; what the compiler wraps around one doesn't.
    private static int Place(ArrayValue own, int at) => own.Wrapping == Wrapping.AroundArray && (at < 0 || at >= own.Items.Length) ? throw Making.OutOfArray() : Making.Place(at, own.Items.Length);

    private static int Dimension(ArrayValue array, Invocation call) => call.Whole(1) is var dimension && dimension >= 0 && dimension < array.Lengths.Length
        ? array.Lengths[dimension]
        : throw new ThrownByCode("System.IndexOutOfRangeException", $"An array has no dimension {dimension}.");

    /// <summary>An array of some items.</summary>
    public static ArrayValue Of(IEnumerable<object?> items, TypeKey? itemType = null)
    {
        var array = new ArrayValue([.. items.Select(ValueCopies.Of)], null, itemType);
        Budget.Current.Make(array.Items.Length);
        return array;
    }

    /// <summary>Copies a list's items into an array: all, or all from a place of the array on, or a stretch.</summary>
    public static object? CopyTo(IReadOnlyList<object?> items, Invocation call)
    {
        var target = call.Count > 3 ? call[2] : call[1];
        var (from, to, count) = call.Count switch
        {
            2 => (0, 0, items.Count),
            3 => (0, call.Whole(2), items.Count),
            _ => (call.Whole(1), call.Whole(3), call.Whole(4)),
        };
        return Copy(call, items, from, target, to, count);
    }

    private static void Statics()
    {
        foreach (var (name, run) in Searching.Methods)
        {
            FrameworkTable.Add(Type, name, call => call[0] switch
            {
                ArrayValue own => run(own.Items, call),
                null => throw new ThrownByCode("System.ArgumentNullException", "The array is null."),
                _ => throw call.Unknown(),
            });
        }

        FrameworkTable.Add(Type, "Empty", _ => new ArrayValue([]));
        Change("Sort", Sort);
        Change("Reverse", (own, call) => Reverse(own, call));
        Change("Fill", (own, call) => Fill(own, call));
        Change("ForEach", (own, call) => ForEach(own, call));
        FrameworkTable.Add(Type, "ConvertAll", call => call[0] is ArrayValue own && call.Function(1) is var convert
            ? Of(Searching.Each(own.Items, item => convert.Invoke(call.Machine, item)), call.Method.TypeArguments.LastOrDefault())
            : throw call.Unknown());
        FrameworkTable.Add(Type, "AsReadOnly", call => call[0] is ArrayValue own ? new ReadOnlyValue("System.Collections.ObjectModel.ReadOnlyCollection", own) : throw call.Unknown());
        FrameworkTable.Add(Type, "Copy", CopyStretch);
        Change("Clear", (own, call) => Clear(own, call));
        FrameworkTable.Add(Type, "CopyTo", call => call[0] is ArrayValue own ? CopyTo(own.Items, call) : throw call.Unknown());
        FrameworkTable.Add(Type, "Resize", Resize);
    }

    // What changes an array in an unknown way leaves it open.
    private static void Change(string name, Func<ArrayValue, Invocation, object?> run) => FrameworkTable.Add(Type, name, new FrameworkMethod(call => call[0] switch
    {
        ArrayValue own => run(own, call),
        null => throw new ThrownByCode("System.ArgumentNullException", "The array is null."),
        _ => throw call.Unknown(),
    })
    {
        Changes = true,
    });

    private static int Index(int at, ArrayValue array) =>
        at >= 0 && at < array.Items.Length ? at : throw new ThrownByCode("System.IndexOutOfRangeException", "The array has no such place.");

    private static object? Write(Invocation call, ArrayValue array, int at, object? value)
    {
        call.Machine.Write(array.Items, at, ValueCopies.Of(value));
        return null;
    }

    private static void WriteAll(Invocation call, ArrayValue array, int start, IReadOnlyList<object?> items)
    {
        call.Machine.Budget.Spend(items.Count);
        for (var i = 0; i < items.Count; i++)
            Write(call, array, start + i, items[i]);
    }

    // Two arrays are sorted together, the second by the order of the first.
    private static object? Sort(ArrayValue own, Invocation call)
    {
        var paired = call.Method.TypeArguments.Count > 1 || call[1] is ArrayValue ? call[1] as ArrayValue : null;
        var rest = call.Arguments.Skip(paired is null ? 1 : 2).ToList();
        var isStretch = rest.Count >= 2 && rest[0] is int;
        var (start, count) = isStretch ? Making.Stretch((int)rest[0]!, rest[1] as int? ?? throw call.Unknown(), own.Items.Length) : (0, own.Items.Length);
        var order = Orders.Of(rest.Skip(isStretch ? 2 : 0).FirstOrDefault(), call.Machine);
        if (paired is not null && (start + count > paired.Items.Length))
            throw new ThrownByCode("System.ArgumentException", "The second array is too short.");
        var slots = Enumerable.Range(start, count).Select(at => (Key: own.Items[at], Value: paired?.Items[at])).ToList();
        Sorting.Sort(slots, 0, count, new KeyOrder(order));
        WriteAll(call, own, start, [.. slots.Select(slot => slot.Key)]);
        if (paired is not null)
            WriteAll(call, paired, start, [.. slots.Select(slot => slot.Value)]);
        return null;
    }

    private static object? Reverse(ArrayValue own, Invocation call)
    {
        var (start, count) = call.Count > 2 ? Making.Stretch(call.Whole(1), call.Whole(2), own.Items.Length) : (0, own.Items.Length);
        WriteAll(call, own, start, [.. own.Items.Skip(start).Take(count).Reverse()]);
        return null;
    }

    private static object? Fill(ArrayValue own, Invocation call)
    {
        var (start, count) = call.Count > 2 ? (call.Whole(2), call.Whole(3)) : (0, own.Items.Length);
        if (start < 0 || start > own.Items.Length || count < 0 || start > own.Items.Length - count)
            throw Making.OutOfRange();
        WriteAll(call, own, start, [.. Enumerable.Repeat(call[1], count)]);
        return null;
    }

    private static object? Clear(ArrayValue own, Invocation call)
    {
        var (start, count) = call.Count > 1 ? (call.Whole(1), call.Whole(2)) : (0, own.Items.Length);
        if (start < 0 || count < 0 || start > own.Items.Length - count)
            throw new ThrownByCode("System.IndexOutOfRangeException", "The array has no such stretch.");
        var type = own.ItemType ?? throw call.Unknown();
        for (var i = start; i < start + count; i++)
            Write(call, own, i, Defaults.Of(type, call.Machine));
        return null;
    }

    private static object? ForEach(ArrayValue own, Invocation call)
    {
        var action = call.Function(1);
        foreach (var _ in Searching.Each(own.Items, item => action.Invoke(call.Machine, item)))
        {
        }

        return null;
    }

    private static object? CopyStretch(Invocation call)
    {
        if (call[0] is not ArrayValue source)
            throw call.Unknown();
        return call.Count == 3
            ? Copy(call, source.Items, 0, call[1], 0, call.Whole(2))
            : Copy(call, source.Items, call.Whole(1), call[2], call.Whole(3), call.Whole(4));
    }

    private static object? Copy(Invocation call, IReadOnlyList<object?> items, int from, object? target, int to, int count)
    {
        if (target is null)
            throw new ThrownByCode("System.ArgumentNullException", "The array that is copied to is null.");
        if (from < 0 || to < 0 || count < 0)
            throw Making.OutOfRange();
        if (target is not ArrayValue array)
            throw call.Unknown();
        if (from > items.Count - count || to > array.Items.Length - count)
            throw new ThrownByCode("System.ArgumentException", "The array that is copied to is too short.");
        WriteAll(call, array, to, [.. items.Skip(from).Take(count)]);
        return null;
    }

    private static object? Resize(Invocation call)
    {
        if (call[0] is not Cell cell)
            throw call.Unknown();
        var length = call.Whole(1);
        if (length < 0)
            throw Making.OutOfRange();
        if (length > Limits.Items)
            throw new ReadingStopped($"an array has more than {Limits.Items} items");
        var items = cell.Items[cell.Index] switch
        {
            ArrayValue array => array.Items,
            null => [],
            _ => throw call.Unknown(),
        };
        if (cell.Items[cell.Index] is null || items.Length != length)
            call.Out(0, Of(Enumerable.Range(0, length).Select(at => at < items.Length ? items[at] : call.Default()), call.Method.TypeArguments.FirstOrDefault()));
        return null;
    }

    private sealed class KeyOrder(IComparer<object?> order) : IComparer<(object? Key, object? Value)>
    {
        public int Compare((object? Key, object? Value) a, (object? Key, object? Value) b) => order.Compare(a.Key, b.Key);
    }
}
