using System.Collections;

namespace Condyle.Analyzers.Reading;

/// <summary>A lazy sequence: an iterator of the user's or a query. It runs when it is enumerated, each time anew.</summary>
internal class SequenceValue : IItemsValue, IEnumerable<object?>
{
    private readonly Func<IEnumerable<object?>> items;

    public SequenceValue(Func<IEnumerable<object?>> items, int depth = 0)
    {
        this.items = items;
        Depth = depth <= Limits.Nesting ? depth : throw new ReadingStopped($"queries lie more than {Limits.Nesting} deep inside each other");
    }

    protected SequenceValue(int depth)
        : this(() => [], depth)
    {
    }

    public IReadOnlyList<TypeKey>? TypeArguments { get; set; }

    /// <summary>How many queries lie inside each other in it.</summary>
    public int Depth { get; }

    public virtual IEnumerator<object?> GetEnumerator() => items().GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

/// <summary>What an iterator of the user's hands out.</summary>
/// <param name="items">Runs it.</param>
/// <param name="hasFinalParts">Whether something of it runs when it is left early.</param>
internal sealed class IteratorValue(Func<IEnumerable<object?>> items, bool hasFinalParts) : SequenceValue(items)
{
    public bool HasFinalParts { get; } = hasFinalParts;
}
