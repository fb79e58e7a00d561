namespace Condyle.Analyzers.Reading;

/// <summary>
/// An enumerator that the code moves on by itself. It keeps what it has handed out, so that another way through the code finds the same
/// items again.
/// </summary>
internal sealed class EnumeratorValue(Func<IEnumerator<object?>> start, bool runsCode) : ICollectionValue, IFrameworkValue
{
    private readonly List<object?> taken = [];
    private IEnumerator<object?>? items;
    private bool isAtEnd;
    private int position = -1;

    public string TypeName => "System.Collections.IEnumerator";

    public bool IsOpen { get; set; }

    /// <summary>Whether moving on may run the user's own code.</summary>
    public bool RunsCode => runsCode;

    public bool IsAtItem => position >= 0 && position < taken.Count;

    public object? Current => taken[position];

    /// <summary>Whether the next item was handed out before, on another way.</summary>
    public bool KnowsNext => position + 1 < taken.Count || isAtEnd;

    /// <summary>Begins: a collection that changes from here on makes it fail.</summary>
    public EnumeratorValue Begun()
    {
        items ??= runsCode ? null : start();
        return this;
    }

    public bool MoveNext()
    {
        if (position + 1 >= taken.Count && !isAtEnd)
        {
            items ??= start();
            if (items.MoveNext())
                taken.Add(items.Current);
            else
                isAtEnd = true;
        }

        if (position < taken.Count)
            position++;
        return position < taken.Count;
    }

    public void Dispose()
    {
        items?.Dispose();
        taken.RemoveRange(Math.Min(taken.Count, position + 1), Math.Max(0, taken.Count - position - 1));
        isAtEnd = true;
    }

    public object Snapshot() => (position, IsOpen);

    public void Restore(object snapshot) => (position, IsOpen) = ((int, bool))snapshot;

    public bool Holds(object snapshot) => snapshot.Equals((position, IsOpen));
}
