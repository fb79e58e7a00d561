namespace Condyle.Analyzers.Reading;

/// <summary>
/// A query, as lazy as the framework's own. What is asked of it besides its items, it answers as the framework does: some answers need
/// fewer items than others, and the functions of the code see that.
/// </summary>
internal abstract class Query(Machine machine, int depth) : SequenceValue(depth)
{
    protected Machine Machine => machine;

    /// <summary>Whether its items are taken by their place, as a list's.</summary>
    public virtual bool IsList => false;

    public sealed override IEnumerator<object?> GetEnumerator() => Items().GetEnumerator();

    /// <summary>How many items there are; none where only a cheap answer is wanted and it would have to enumerate.</summary>
    public virtual int? Count(bool onlyIfCheap)
    {
        if (onlyIfCheap)
            return null;
        var count = 0;
        foreach (var _ in Sequences.Counted(this, machine.Budget))
            count++;
        return count;
    }

    /// <summary>What holds the same items where their order doesn't count; none where that is itself.</summary>
    public virtual Source? Unordered => null;

    /// <summary>The items where all of them are gathered in one go; none where that is as if they were enumerated.</summary>
    public virtual IEnumerable<object?>? All() => null;

    public virtual Found First() => Source.FirstOf(this, machine);

    public virtual Found Last() => Source.LastOf(this, machine);

    public virtual Found At(int place) => place == 0 ? First() : Source.AtOf(this, place, machine);

    public virtual SequenceValue Skip(int count) => new StretchQuery(machine, new Source(this, machine), count, null);

    public virtual SequenceValue Take(int count) => new StretchQuery(machine, new Source(this, machine), 0, count);

    /// <summary>The items, each time anew.</summary>
    protected abstract IEnumerable<object?> Items();
}

/// <summary>An item that was looked for, or none.</summary>
internal readonly record struct Found(bool IsThere, object? Item)
{
    public static Found Nothing => default;

    public static Found Of(object? item) => new(true, item);
}
