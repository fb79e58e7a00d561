namespace Condyle.Analyzers.Reading;

/// <summary>Something made of each item of a list, or of a stretch of it.</summary>
internal sealed class ListSelectQuery(Machine machine, Source source, FunctionValue selector, int first = 0, int last = int.MaxValue) : Query(machine, source.Depth + 1)
{
    private int Length => Math.Max(0, Math.Min(source.Length - 1, last) - first + 1);

    // Counting makes what it counts, as someone may count on it.
    public override int? Count(bool onlyIfCheap)
    {
        var length = Length;
        for (var i = 0; i < length && !onlyIfCheap; i++)
            Make(i);
        return length;
    }

    public override Found First() => At(0);

    public override Found Last() => At(Length - 1);

    public override Found At(int place) => place >= 0 && place < Length ? Found.Of(Make(place)) : Found.Nothing;

    public override SequenceValue Skip(int count) => count > last - first ? new EmptyQuery(Machine) : new ListSelectQuery(Machine, source, selector, first + count, last);

    public override SequenceValue Take(int count) => count > last - first ? this : new ListSelectQuery(Machine, source, selector, first, first + count - 1);

    // A whole list is enumerated, so that changing it meanwhile is noticed; a stretch goes by places.
    protected override IEnumerable<object?> Items()
    {
        if (first == 0 && last == int.MaxValue && source.Query is null)
        {
            foreach (var item in source.Items())
                yield return selector.Invoke(Machine, item);
            yield break;
        }

        for (var i = 0; i < Length; i++)
            yield return Make(i);
    }

    private object? Make(int place)
    {
        Machine.Budget.Spend();
        return selector.Invoke(Machine, source[first + place]);
    }
}

/// <summary>Something made of each item of what is enumerated.</summary>
/// <param name="machine">The machine that runs the function.</param>
/// <param name="source">What is enumerated.</param>
/// <param name="selector">Makes something of an item.</param>
/// <param name="passesStretches">Whether a stretch of it is made of the same stretch of its source: what is skipped is never made then.</param>
internal sealed class SelectQuery(Machine machine, Source source, FunctionValue selector, bool passesStretches) : Query(machine, source.Depth + 1)
{
    public bool PassesStretches => passesStretches;

    public override int? Count(bool onlyIfCheap) => onlyIfCheap ? passesStretches ? source.Count(onlyIfCheap) : null : base.Count(onlyIfCheap);

    public override Found First() => Make(source.Query is { } query ? query.First() : Source.FirstOf(source.Items(), Machine));

    public override Found Last() => Make(source.Query is { } query ? query.Last() : Source.LastOf(source.Items(), Machine));

    public override Found At(int place) => Make(source.Query is { } query ? query.At(place) : Source.AtOf(source.Items(), place, Machine));

    public override SequenceValue Skip(int count) => passesStretches && source.Query is { } query ? Of(query.Skip(count)) : base.Skip(count);

    public override SequenceValue Take(int count) => passesStretches && source.Query is { } query ? Of(query.Take(count)) : base.Take(count);

    protected override IEnumerable<object?> Items()
    {
        foreach (var item in source.Items())
            yield return selector.Invoke(Machine, item);
    }

    private SequenceValue Of(SequenceValue stretch) => stretch is EmptyQuery ? stretch : new SelectQuery(Machine, new Source(stretch, Machine), selector, passesStretches);

    private Found Make(Found found) => found.IsThere ? Found.Of(selector.Invoke(Machine, found.Item)) : found;
}

/// <summary>The items that a condition holds for.</summary>
internal sealed class WhereQuery(Machine machine, Source source, FunctionValue predicate) : Query(machine, source.Depth + 1)
{
    // Of a list the last one is looked for from its end.
    public override Found Last()
    {
        if (!source.IsPlainList)
            return base.Last();
        for (var i = source.Length - 1; i >= 0; i--)
        {
            var item = source[i];
            if (Conditions.Holds(predicate, Machine, item))
                return Found.Of(item);
        }

        return Found.Nothing;
    }

    protected override IEnumerable<object?> Items()
    {
        foreach (var item in source.Items())
        {
            if (Conditions.Holds(predicate, Machine, item))
                yield return item;
        }
    }
}

/// <summary>What functions that queries are handed answer.</summary>
internal static class Conditions
{
    public static bool Holds(FunctionValue predicate, Machine machine, params object?[] arguments) => machine.Decide(predicate.Invoke(machine, arguments)) is bool truth
        ? truth
        : throw new SequenceIsOpen("whether a query keeps an item depends on an unknown condition");
}
