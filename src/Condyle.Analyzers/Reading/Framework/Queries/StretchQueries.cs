namespace Condyle.Analyzers.Reading;

/// <summary>A stretch of a list: what lies before it is never touched.</summary>
internal sealed class ListStretchQuery(Machine machine, Source source, int first, int last) : Query(machine, source.Depth + 1)
{
    public override bool IsList => true;

    private int Length => Math.Max(0, Math.Min(source.Length - 1, last) - first + 1);

    public override int? Count(bool onlyIfCheap) => Length;

    public override Found First() => At(0);

    public override Found Last() => At(Length - 1);

    public override Found At(int place) => place >= 0 && place < Length ? Found.Of(source[first + place]) : Found.Nothing;

    public override SequenceValue Skip(int count) => count > last - first ? new EmptyQuery(Machine) : new ListStretchQuery(Machine, source, first + count, last);

    public override SequenceValue Take(int count) => count > last - first ? this : new ListStretchQuery(Machine, source, first, first + count - 1);

    /// <summary>The same stretch with something made of each item.</summary>
    public Query Select(FunctionValue selector) => new ListSelectQuery(Machine, source, selector, first, last);

    protected override IEnumerable<object?> Items()
    {
        for (var i = 0; i < Length; i++)
            yield return source[first + i];
    }
}

/// <summary>A stretch of what is enumerated: all after some items, or at most a number of them.</summary>
internal sealed class StretchQuery(Machine machine, Source source, int skipped, int? taken) : Query(machine, source.Depth + 1)
{
    public override int? Count(bool onlyIfCheap)
    {
        if (onlyIfCheap)
            return null;
        if (taken is null)
            return Math.Max(0, (source.Count(onlyIfCheap: false) ?? 0) - skipped);
        var count = 0;
        using var items = source.Items().GetEnumerator();
        while (count < skipped + taken && items.MoveNext())
            count++;
        return Math.Max(0, count - skipped);
    }

    public override Found First() => source.Query is { } query ? query.At(skipped) : base.First();

    public override Found Last() => source.Query is { } query && query.Count(onlyIfCheap: true) is { } count && count >= skipped
        ? taken is { } most ? query.At(skipped + most - 1) : query.Last()
        : base.Last();

    public override Found At(int place) => place < 0 || place >= taken ? Found.Nothing : source.Query is { } query ? query.At(skipped + place) : Source.AtOf(source.Items(), skipped + place, Machine);

    public override SequenceValue Skip(int count) => count >= taken ? new EmptyQuery(Machine) : new StretchQuery(Machine, source, skipped + count, taken - count);

    public override SequenceValue Take(int count) => count >= taken ? this : new StretchQuery(Machine, source, skipped, count);

    protected override IEnumerable<object?> Items()
    {
        using var items = source.Items().GetEnumerator();
        for (var i = 0; i < skipped; i++)
        {
            if (!items.MoveNext())
                yield break;
        }

        for (var i = 0; (taken is null || i < taken) && items.MoveNext(); i++)
            yield return items.Current;
    }
}

/// <summary>No items at all.</summary>
internal sealed class EmptyQuery(Machine machine) : Query(machine, 0)
{
    public override bool IsList => true;

    public override int? Count(bool onlyIfCheap) => 0;

    public override SequenceValue Skip(int count) => this;

    public override SequenceValue Take(int count) => this;

    protected override IEnumerable<object?> Items() => [];
}

/// <summary>As many items as are asked for, each made of its place: numbers in a row, one item again and again.</summary>
internal sealed class RowQuery(Machine machine, int length, Func<int, object?> item) : Query(machine, 0)
{
    public override bool IsList => true;

    public override int? Count(bool onlyIfCheap) => length;

    public override Found First() => At(0);

    public override Found Last() => At(length - 1);

    public override Found At(int place) => place >= 0 && place < length ? Found.Of(item(place)) : Found.Nothing;

    public override SequenceValue Skip(int count) => count >= length ? new EmptyQuery(Machine) : new RowQuery(Machine, length - count, place => item(place + count));

    public override SequenceValue Take(int count) => count >= length ? this : new RowQuery(Machine, count, item);

    protected override IEnumerable<object?> Items()
    {
        for (var i = 0; i < length; i++)
            yield return item(i);
    }
}
