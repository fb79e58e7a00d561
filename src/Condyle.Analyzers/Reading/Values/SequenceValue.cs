using System.Collections;

namespace Condyle.Analyzers.Reading;

/// <summary>A lazy sequence: an iterator of the user's or a query. It runs when it is enumerated, each time anew.</summary>
internal sealed class SequenceValue(Func<IEnumerable<object?>> items, int depth = 0) : IEnumerable<object?>
{
    /// <summary>How many queries lie inside each other in it.</summary>
    public int Depth { get; } = depth;

    public IEnumerator<object?> GetEnumerator() => items().GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
