namespace Condyle.Analyzers.Reading;

/// <summary>How lists and arrays are searched: by items and by conditions, from the start and from the end, in the whole and in stretches.</summary>
internal static class Searching
{
    /// <summary>The members that lists have; the receiver is the first argument, and nothing else tells them from an array's static ones.</summary>
    public static void Register<T>(TypeMembers<T> type, Func<T, IReadOnlyList<object?>> items)
        where T : class
    {
        foreach (var (name, run) in Methods)
            type.Asks(name, (own, call) => run(items(own), call));
    }

    public static readonly IReadOnlyList<(string Name, Func<IReadOnlyList<object?>, Invocation, object?> Run)> Methods =
    [
        ("Contains", (items, call) => IndexOf(items, call, 0, items.Count) >= 0),
        ("IndexOf", (items, call) => Stretch(items, call, 2) is var (start, count) ? IndexOf(items, call, start, count) : null),
        ("LastIndexOf", (items, call) => Backwards(items, call, 2) is var (start, count) ? LastIndexOf(items, call, start, count) : null),
        ("BinarySearch", BinarySearch),
        ("Exists", (items, call) => FindIndex(items, call, 1, 0, items.Count) >= 0),
        ("Find", (items, call) => FindIndex(items, call, 1, 0, items.Count) is >= 0 and var at ? items[at] : call.Default()),
        ("FindLast", (items, call) => FindLastIndex(items, call, 1, items.Count - 1, items.Count) is >= 0 and var at ? items[at] : call.Default()),
        ("FindAll", (items, call) => FindAll(items, call)),
        ("FindIndex", (items, call) => call.Count == 2 ? FindIndex(items, call, 1, 0, items.Count)
            : Making.Stretch(call.Whole(1), call.Count > 3 ? call.Whole(2) : items.Count - call.Whole(1), items.Count) is var (start, count) ? FindIndex(items, call, call.Count - 1, start, count) : null),
        ("FindLastIndex", (items, call) => call.Count == 2 ? FindLastIndex(items, call, 1, items.Count - 1, items.Count)
            : FindLastIndex(items, call, call.Count - 1, call.Whole(1), call.Count > 3 ? call.Whole(2) : call.Whole(1) + 1)),
        ("TrueForAll", (items, call) => call.Function(1) is var matches && Each(items, item => item).All(item => call.Truth(matches.Invoke(call.Machine, item)))),
    ];

    /// <summary>What a function makes of each item, in order.</summary>
    public static IEnumerable<object?> Each(IReadOnlyList<object?> items, Func<object?, object?> make)
    {
        for (var i = 0; i < items.Count; i++)
        {
            Budget.Current.Spend();
            yield return make(items[i]);
        }
    }

    /// <summary>The first place of argument 1; an item that isn't known may be it.</summary>
    public static int IndexOf(IReadOnlyList<object?> items, Invocation call, int start, int count)
    {
        var wanted = call.Key(1);
        for (var i = start; i < start + count; i++)
        {
            if (IsSame(items[i], wanted, call))
                return i;
        }

        return -1;
    }

    private static int LastIndexOf(IReadOnlyList<object?> items, Invocation call, int start, int count)
    {
        var wanted = call.Key(1);
        for (var i = start; i > start - count; i--)
        {
            if (IsSame(items[i], wanted, call))
                return i;
        }

        return -1;
    }

    private static bool IsSame(object? item, object? wanted, Invocation call)
    {
        call.Machine.Budget.Spend();
        call.Machine.Calls.Observe(item);
        return KnownEquality.IsKnown(item) ? call.Machine.Equality.Equals(item, wanted) : throw call.Unknown();
    }

    private static int FindIndex(IReadOnlyList<object?> items, Invocation call, int match, int start, int count)
    {
        var matches = call.Function(match);
        for (var i = start; i < start + count; i++)
        {
            call.Machine.Budget.Spend();
            if (call.Truth(matches.Invoke(call.Machine, items[i])))
                return i;
        }

        return -1;
    }

    private static int FindLastIndex(IReadOnlyList<object?> items, Invocation call, int match, int start, int count)
    {
        var matches = call.Function(match);
        if (count < 0 || start >= items.Count || start - count + 1 < 0)
            throw Making.OutOfRange();
        for (var i = start; i > start - count; i--)
        {
            call.Machine.Budget.Spend();
            if (call.Truth(matches.Invoke(call.Machine, items[i])))
                return i;
        }

        return -1;
    }

    private static object FindAll(IReadOnlyList<object?> items, Invocation call)
    {
        var matches = call.Function(1);
        var found = Each(items, item => item).Where(item => call.Truth(matches.Invoke(call.Machine, item))).ToList();
        return call.Method.ContainingType == "System.Array" ? Arrays.Of(found, call.Method.TypeArguments.FirstOrDefault()) : new ListValue(found);
    }

    private static object? BinarySearch(IReadOnlyList<object?> items, Invocation call)
    {
        var isStretch = call.Count > 3;
        var (start, count) = isStretch ? Making.Stretch(call.Whole(1), call.Whole(2), items.Count) : (0, items.Count);
        var order = Orders.Of(isStretch ? call[4] : call[2], call.Machine);
        return Sorting.Find(items, start, count, call[isStretch ? 3 : 1], order);
    }

    private static (int Start, int Count) Stretch(IReadOnlyList<object?> items, Invocation call, int from)
    {
        if (call.Count <= from)
            return (0, items.Count);
        var start = call.Whole(from);
        var count = call.Count > from + 1 ? call.Whole(from + 1) : items.Count - start;
        return start >= 0 && count >= 0 && start <= items.Count - count ? (start, count) : throw Making.OutOfRange();
    }

    private static (int Start, int Count) Backwards(IReadOnlyList<object?> items, Invocation call, int from)
    {
        if (call.Count <= from)
            return (items.Count - 1, items.Count);
        var start = call.Whole(from);
        var count = call.Count > from + 1 ? call.Whole(from + 1) : start + 1;
        return items.Count == 0 ? (-1, 0) : start < items.Count && count >= 0 && start - count + 1 >= 0 ? (start, count) : throw Making.OutOfRange();
    }
}
