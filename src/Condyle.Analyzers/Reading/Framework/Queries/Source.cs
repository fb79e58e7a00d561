namespace Condyle.Analyzers.Reading;

/// <summary>What a query reads from: another query, a list, any other collection, or something that is only enumerated.</summary>
internal sealed class Source(object value, Machine machine)
{
    public object Value => value;

    public Query? Query => value as Query;

    /// <summary>How deep queries lie inside each other up to here.</summary>
    public int Depth => (value as SequenceValue)?.Depth ?? 0;

    /// <summary>Whether its items are taken by their place.</summary>
    public bool IsList => value is IStretch or CollectionValue { IsIndexed: true } or Query { IsList: true } || (value is ReadOnlyValue { Inner: var inner } && new Source(inner, machine).IsList);

    /// <summary>Whether it is an array or a list, which queries know best.</summary>
    public bool IsPlainList => value is ArrayValue or ListValue { TypeName: ListValue.Type };

    /// <summary>Whether it knows how many items it has.</summary>
    public bool IsCounted => value is IStretch or CollectionValue or ReadOnlyValue or Query { IsList: true };

    /// <summary>The number of items where it is counted.</summary>
    public int Length => value switch
    {
        IStretch stretch => stretch.Length,
        CollectionValue { IsOpen: true } => throw new SequenceIsOpen("how many items a collection has isn't known"),
        CollectionValue own => own.Count,
        Query { IsList: true } query => query.Count(onlyIfCheap: false) ?? 0,
        ReadOnlyValue { Inner: var inner } => new Source(inner, machine).Length,
        _ => Items().Count(),
    };

    public object? this[int place] => value switch
    {
        IStretch stretch => ValueCopies.Of(stretch.Items[stretch.Start + place]),
        CollectionValue { IsOpen: true } => throw new SequenceIsOpen("what a collection holds isn't known"),
        CollectionValue own => own.At(place),
        Query query => query.At(place).Item,
        ReadOnlyValue { Inner: var inner } => new Source(inner, machine)[place],
        _ => Items().ElementAt(place),
    };

    /// <summary>The items, each time anew.</summary>
    public IEnumerable<object?> Items() => Sequences.Of(value, machine) ?? throw new SequenceIsOpen("a query reads items that aren't known");

    /// <summary>The items, gathered in one go.</summary>
    public List<object?> All() => Sequences.ToLimitedList(Query?.All() ?? Items());

    public int? Count(bool onlyIfCheap) => IsCounted ? Length : Query is { } query ? query.Count(onlyIfCheap) : onlyIfCheap ? null : Items().Count();

    public Found First() => Query?.First() ?? (IsList ? Length > 0 ? Found.Of(this[0]) : Found.Nothing : FirstOf(Items(), machine));

    public Found Last() => Query?.Last() ?? (IsList ? Length is > 0 and var length ? Found.Of(this[length - 1]) : Found.Nothing : LastOf(Items(), machine));

    public Found At(int place) => Query?.At(place) ?? (IsList ? place >= 0 && place < Length ? Found.Of(this[place]) : Found.Nothing : AtOf(Items(), place, machine));

    /// <summary>What is thrown for a place that has no item.</summary>
    public ThrownByCode Refusal() => value is ListValue { TypeName: ImmutableNames.Array } or ArrayValue { Wrapping: Wrapping.AroundArray } ? Making.OutOfArray() : Making.OutOfRange();

    public static Found FirstOf(IEnumerable<object?> items, Machine machine)
    {
        foreach (var item in Sequences.Counted(items, machine.Budget))
            return Found.Of(item);
        return Found.Nothing;
    }

    public static Found LastOf(IEnumerable<object?> items, Machine machine)
    {
        var last = Found.Nothing;
        foreach (var item in Sequences.Counted(items, machine.Budget))
            last = Found.Of(item);
        return last;
    }

    public static Found AtOf(IEnumerable<object?> items, int place, Machine machine)
    {
        if (place < 0)
            return Found.Nothing;
        foreach (var item in Sequences.Counted(items, machine.Budget))
        {
            if (place-- == 0)
                return Found.Of(item);
        }

        return Found.Nothing;
    }
}
