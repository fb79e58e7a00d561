using System.Collections;

namespace Condyle.Analyzers.Reading;

/// <summary>A lazy sequence: an iterator of the user's or a query. It runs when it is enumerated, each time anew.</summary>
internal sealed class SequenceValue(Func<IEnumerable<object?>> items) : IEnumerable<object?>
{
    public IEnumerator<object?> GetEnumerator() => items().GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
