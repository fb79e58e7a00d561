namespace Condyle.Analyzers.Reading;

/// <summary>One sequence after another.</summary>
internal sealed class ConcatQuery(Machine machine, Source first, Source second) : Query(machine, Math.Max(first.Depth, second.Depth) + 1)
{
    // What can be counted cheaply is, also where anything would do.
    public override int? Count(bool onlyIfCheap)
    {
        var count = first.Count(onlyIfCheap: true) ?? (onlyIfCheap ? null : first.Count(onlyIfCheap: false));
        return count is { } known && (second.Count(onlyIfCheap: true) ?? (onlyIfCheap ? null : second.Count(onlyIfCheap: false))) is { } more ? known + more : null;
    }

    public override Found First() => first.First() is { IsThere: true } found ? found : second.First();

    public override Found Last() => second.Last() is { IsThere: true } found ? found : first.Last();

    public override Found At(int place)
    {
        if (first.Count(onlyIfCheap: true) is not { } count)
            return Source.AtOf(this, place, Machine);
        return place < count ? first.At(place) : second.At(place - count);
    }

    protected override IEnumerable<object?> Items() => first.Items().Concat(Later(second));

    // The second one begins when the first one is at its end.
    private static IEnumerable<object?> Later(Source source)
    {
        foreach (var item in source.Items())
            yield return item;
    }
}

/// <summary>A sequence with items put before and after it.</summary>
internal sealed class EndsQuery(Machine machine, Source source, IReadOnlyList<object?> before, IReadOnlyList<object?> after) : Query(machine, source.Depth + 1)
{
    private bool IsSingle => before.Count + after.Count == 1;

    public override int? Count(bool onlyIfCheap) => source.Count(onlyIfCheap) is { } count ? count + before.Count + after.Count : null;

    public override Found First() => !IsSingle ? base.First() : before.Count > 0 ? Found.Of(before[0]) : source.First() is { IsThere: true } found ? found : Found.Of(after[0]);

    public override Found Last() => !IsSingle ? base.Last() : after.Count > 0 ? Found.Of(after[0]) : source.Last() is { IsThere: true } found ? found : Found.Of(before[0]);

    public override Found At(int place) => !IsSingle || before.Count == 0 ? base.At(place) : place == 0 ? Found.Of(before[0]) : source.At(place - 1);

    public EndsQuery With(object? item, bool isAfter) => isAfter
        ? new EndsQuery(Machine, source, before, [.. after, item])
        : new EndsQuery(Machine, source, [item, .. before], after);

    protected override IEnumerable<object?> Items()
    {
        foreach (var item in before)
            yield return item;
        foreach (var item in source.Items())
            yield return item;
        foreach (var item in after)
            yield return item;
    }
}

/// <summary>A sequence, or a single item where it has none.</summary>
internal sealed class DefaultQuery(Machine machine, Source source, object? otherwise) : Query(machine, source.Depth + 1)
{
    public override int? Count(bool onlyIfCheap) => source.Count(onlyIfCheap) is { } count ? Math.Max(1, count) : null;

    public override Found First() => source.First() is { IsThere: true } found ? found : Found.Of(otherwise);

    public override Found Last() => source.Last() is { IsThere: true } found ? found : Found.Of(otherwise);

    public override Found At(int place) => source.At(place) is { IsThere: true } found ? found : place == 0 ? Found.Of(otherwise) : Found.Nothing;

    protected override IEnumerable<object?> Items()
    {
        var isEmpty = true;
        foreach (var item in source.Items())
        {
            isEmpty = false;
            yield return item;
        }

        if (isEmpty)
            yield return otherwise;
    }
}

/// <summary>A sequence from its end to its start.</summary>
internal sealed class ReverseQuery(Machine machine, Source source) : Query(machine, source.Depth + 1)
{
    public override Source? Unordered => source;

    public override int? Count(bool onlyIfCheap) => source.Count(onlyIfCheap);

    public override Found First() => source.Last();

    public override Found Last() => source.First();

    public override Found At(int place)
    {
        if (source.IsList)
            return place >= 0 && place < source.Length ? Found.Of(source[source.Length - place - 1]) : Found.Nothing;
        if (place < 0)
            return Found.Nothing;
        var items = source.All();
        return place < items.Count ? Found.Of(items[items.Count - place - 1]) : Found.Nothing;
    }

    protected override IEnumerable<object?> Items()
    {
        var items = source.All();
        for (var i = items.Count - 1; i >= 0; i--)
            yield return items[i];
    }
}

/// <summary>The sequences that are made of each item, one after another.</summary>
internal sealed class SelectManyQuery(Machine machine, Source source, FunctionValue selector) : Query(machine, source.Depth + 1)
{
    // Counting asks each part for its count.
    public override int? Count(bool onlyIfCheap)
    {
        if (onlyIfCheap)
            return null;
        var count = 0;
        foreach (var item in source.Items())
            count += Part(item).Count(onlyIfCheap: false) ?? 0;
        return count;
    }

    protected override IEnumerable<object?> Items()
    {
        foreach (var item in source.Items())
        {
            foreach (var inner in Part(item).Items())
                yield return inner;
        }
    }

    private Source Part(object? item) => new(selector.Invoke(Machine, item) ?? throw new ThrownByCode("System.NullReferenceException", "A part of a query is null."), Machine);
}

/// <summary>Each item once: the first of those that are the same, of one sequence or of several.</summary>
internal sealed class DistinctQuery(Machine machine, IReadOnlyList<Source> sources, IEqualityComparer<object?> rule) : Query(machine, sources.Max(source => source.Depth) + 1)
{
    public override Found First() => sources[0].First() is { IsThere: true } found ? found : base.First();

    /// <summary>The same with one more sequence.</summary>
    public DistinctQuery With(Source more) => new(Machine, [.. sources, more], rule);

    public bool IsUnionBy(IEqualityComparer<object?> other) => sources.Count > 1 && ReferenceEquals(rule, other);

    protected override IEnumerable<object?> Items()
    {
        var seen = new HashTable(rule);
        foreach (var source in sources)
        {
            foreach (var item in source.Items())
            {
                if (Keys.IsNew(seen, item))
                    yield return item;
            }
        }
    }
}

/// <summary>The keys that queries compare by.</summary>
internal static class Keys
{
    /// <summary>Whether a key wasn't seen before; it is from here on.</summary>
    public static bool IsNew(HashTable seen, object? key)
    {
        if (seen.Find(Known(key)) >= 0)
            return false;
        seen.Add(key, null);
        return true;
    }

    public static object? Known(object? key) => KnownEquality.IsKnown(key) ? key : throw new SequenceIsOpen("whether items of a query are the same isn't known");
}
