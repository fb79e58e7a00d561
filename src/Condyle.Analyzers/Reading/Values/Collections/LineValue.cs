namespace Condyle.Analyzers.Reading;

/// <summary>A queue, whose first item leaves first, or a stack, whose last one does.</summary>
internal sealed class LineValue(IEnumerable<object?> items, bool isStack, string typeName) : CollectionValue(typeName)
{
    public const string Queue = Generic + "Queue";
    public const string Stack = Generic + "Stack";

    // The next item to leave comes first.
    private LinkedList<object?> line = new(items);

    public bool IsStack => isStack;

    public override int Count => line.Count;

    public object? Next => line.First.Value;

    public void Add(object? item)
    {
        if (Count >= Limits.Items)
            throw new ReadingStopped($"a collection has more than {Limits.Items} items");
        Budget.Current.Make(1);
        if (isStack)
            line.AddFirst(item);
        else
            line.AddLast(item);
        Version++;
    }

    public object? Leave()
    {
        var next = Next;
        line.RemoveFirst();
        Version++;
        return next;
    }

    public void Clear()
    {
        line = new LinkedList<object?>();
        Version++;
    }

    public override IEnumerable<object?> Items()
    {
        for (var node = line.First; node is not null; node = node.Next)
            yield return node.Value;
    }

    public override CollectionValue Copy(string typeName, bool isFixed = false) => new LineValue(line, isStack, typeName) { IsFixed = isFixed };

    protected override void Take(CollectionValue other) => line = ((LineValue)other).line;
}
