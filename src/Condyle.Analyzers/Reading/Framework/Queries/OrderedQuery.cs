namespace Condyle.Analyzers.Reading;

/// <summary>A sorted sequence. Keys are made once for each item and enumeration; where only an end of it is asked for, no more than that needs.</summary>
internal sealed class OrderedQuery(Machine machine, Source source, IReadOnlyList<OrderedQuery.Level> levels) : Query(machine, source.Depth + 1)
{
    public override int? Count(bool onlyIfCheap) => source.Count(onlyIfCheap);

    public override Source? Unordered => source;

    // One item alone is in order as it is: no key of it is made.
    public override IEnumerable<object?>? All() => Buffer() is var items && items.Count > 1 ? Sorted(items) : items;

    public override Found First() => Best(source.Items(), _ => true, order => order < 0, keepsLower: true);

    public override Found Last() => Last(source.Items(), _ => true);

    public override Found At(int place)
    {
        if (place <= 0)
            return place == 0 ? First() : Found.Nothing;
        var items = Buffer();
        return place < items.Count ? Found.Of(Sorted(items)[place]) : Found.Nothing;
    }

    public override SequenceValue Skip(int count) => new OrderedStretch(Machine, this, source.Depth, count, int.MaxValue);

    public override SequenceValue Take(int count) => new OrderedStretch(Machine, this, source.Depth, 0, count - 1);

    /// <summary>The same with a further level, which counts where the ones before don't tell.</summary>
    public OrderedQuery ThenBy(Level level) => new(Machine, source, [.. levels, level]);

    /// <summary>The last of the items that a condition holds for; no others' keys are made.</summary>
    public Found Last(Func<object?, bool> matches) => Last(source.Items(), matches);

    public Found Last(IEnumerable<object?> items, Func<object?, bool> matches) => Best(items, matches, order => order >= 0, keepsLower: false);

    /// <summary>All items as they come from the source.</summary>
    public List<object?> Buffer() => source.All();

    /// <summary>The items in order; where the order isn't known, as many unknown ones.</summary>
    public IReadOnlyList<object?> Sorted(List<object?> items)
    {
        if (items.Count == 0)
            return [];
        var keys = levels.Select(level => level.KeysOf(items, Machine)).ToList();
        var places = Enumerable.Range(0, items.Count).ToList();
        try
        {
            Sorting.Sort(places, 0, places.Count, new PlaceOrder(levels, keys));
        }
        catch (AnswerIsOpen open) when (open is not SequenceIsOpen)
        {
            Machine.Lost.AddAll(items);
            return [.. items.Select(_ => Unknown())];
        }

        return [.. places.Select(place => items[place])];
    }

    protected override IEnumerable<object?> Items()
    {
        foreach (var item in Sorted(Buffer()))
            yield return item;
    }

    private object? Unknown() => Opens.Of(TypeArguments?.FirstOrDefault(), Machine);

    // The keys of a later level are only made where the levels before are the same.
    private Found Best(IEnumerable<object?> items, Func<object?, bool> matches, Func<int, bool> isBetter, bool keepsLower)
    {
        var best = Found.Nothing;
        var held = new object?[levels.Count];
        var isKnown = true;
        var all = new List<object?>();
        foreach (var item in Sequences.Counted(items, Machine.Budget))
        {
            if (!matches(item))
                continue;
            all.Add(item);
            if (!best.IsThere)
            {
                best = Found.Of(item);
                for (var i = 0; i < held.Length; i++)
                    held[i] = levels[i].KeyOf(item, Machine);
                continue;
            }

            try
            {
                if (isKnown && isBetter(Compare(0, item)))
                    best = Found.Of(item);
                else if (!isKnown)
                    levels[0].KeyOf(item, Machine);
            }
            catch (AnswerIsOpen open) when (open is not SequenceIsOpen)
            {
                isKnown = false;
            }
        }

        if (isKnown)
            return best;
        Machine.Lost.AddAll(all);
        return Found.Of(Unknown());

        int Compare(int level, object? item)
        {
            var key = levels[level].KeyOf(item, Machine);
            var order = levels[level].Compare(key, held[level]);
            var isLast = level == held.Length - 1;
            if (order == 0 && !isLast)
                return Compare(level + 1, item);
            if (keepsLower != order < 0)
                return order;
            held[level] = key;
            for (var i = level + 1; i < held.Length; i++)
                held[i] = levels[i].KeyOf(item, Machine);
            return order;
        }
    }

    /// <summary>One level of an order; without a key the items themselves are compared.</summary>
    internal sealed record Level(FunctionValue? Key, IComparer<object?> Order, bool IsDescending)
    {
        public object? KeyOf(object? item, Machine machine) => Key is null ? item : Key.Invoke(machine, item);

        public List<object?> KeysOf(List<object?> items, Machine machine) => [.. items.Select(item => KeyOf(item, machine))];

        public int Compare(object? a, object? b) => IsDescending ? Order.Compare(b, a) : Order.Compare(a, b);
    }

    private sealed class PlaceOrder(IReadOnlyList<Level> levels, List<List<object?>> keys) : IComparer<int>
    {
        public int Compare(int a, int b)
        {
            for (var i = 0; i < levels.Count && a != b; i++)
            {
                var order = levels[i].Order.Compare(keys[i][a], keys[i][b]);
                if (order != 0)
                    return levels[i].IsDescending != order > 0 ? 1 : -1;
            }

            return a - b;
        }
    }
}

/// <summary>A stretch of a sorted sequence.</summary>
internal sealed class OrderedStretch(Machine machine, OrderedQuery ordered, int depth, int first, int last) : Query(machine, depth + 1)
{
    public override int? Count(bool onlyIfCheap) => ordered.Count(onlyIfCheap) is { } count ? Math.Max(0, Math.Min(count - 1, last) - first + 1) : null;

    public override Found First() => ordered.At(first);

    public override Found Last()
    {
        var items = ordered.Buffer();
        return first >= items.Count ? Found.Nothing
            : last < items.Count - 1 ? Found.Of(ordered.Sorted(items)[last])
            : ordered.Last(items, _ => true);
    }

    public override Found At(int place) => place >= 0 && place <= last - first ? ordered.At(first + place) : Found.Nothing;

    public override SequenceValue Skip(int count) => count > last - first ? new EmptyQuery(Machine) : new OrderedStretch(Machine, ordered, Depth - 1, first + count, last);

    public override SequenceValue Take(int count) => count > last - first ? this : new OrderedStretch(Machine, ordered, Depth - 1, first, first + count - 1);

    protected override IEnumerable<object?> Items()
    {
        var items = ordered.Buffer();
        if (items.Count <= first)
            yield break;
        var sorted = ordered.Sorted(items);
        for (var i = first; i <= last && i < sorted.Count; i++)
            yield return sorted[i];
    }
}
