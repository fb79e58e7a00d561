namespace Condyle.Analyzers.Reading;

/// <summary>A priority queue: a heap in which each node has four below it, just as the framework's, so that what has the same priority leaves in the same order.</summary>
internal sealed class HeapValue(IComparer<object?> order) : CollectionValue(HeapValue.Type)
{
    public const string Type = Generic + "PriorityQueue";
    private const int Arity = 4;

    private List<(object? Element, object? Priority)> nodes = [];

    /// <summary>The comparer that it was made with; none for the default one.</summary>
    public object? Comparer { get; init; }

    public override int Count => nodes.Count;

    public (object? Element, object? Priority) Root => nodes[0];

    // In the order in which the heap holds them.
    public override IEnumerable<object?> Items()
    {
        for (var i = 0; i < nodes.Count; i++)
            yield return new TupleValue([nodes[i].Element, nodes[i].Priority]);
    }

    public void Enqueue(object? element, object? priority)
    {
        Append(element, priority);
        Version++;
        MoveUp(nodes[nodes.Count - 1], nodes.Count - 1);
    }

    /// <summary>Fills an empty queue.</summary>
    public void Fill(IEnumerable<(object? Element, object? Priority)> items)
    {
        foreach (var (element, priority) in items)
            Append(element, priority);
        Version++;
        for (var i = (nodes.Count - 2) / Arity; nodes.Count > 1 && i >= 0; i--)
            MoveDown(nodes[i], i);
    }

    public (object? Element, object? Priority) Dequeue()
    {
        var root = nodes[0];
        RemoveAt(0);
        return root;
    }

    /// <summary>Puts an element in the place of the first one, which leaves.</summary>
    public object? Replace(object? element, object? priority)
    {
        var root = nodes[0];
        if (order.Compare(priority, root.Priority) > 0)
            MoveDown((element, priority), 0);
        else
            nodes[0] = (element, priority);
        Version++;
        return root.Element;
    }

    /// <summary>Whether an element would have to wait behind the first one.</summary>
    public bool IsBehindRoot(object? priority) => order.Compare(priority, nodes[0].Priority) > 0;

    public (object? Element, object? Priority)? Remove(object? element, IEqualityComparer<object?> equality)
    {
        Budget.Current.Spend(Count);
        var place = nodes.FindIndex(node => equality.Equals(element, node.Element));
        if (place < 0)
            return null;
        var removed = nodes[place];
        RemoveAt(place);
        return removed;
    }

    public void Clear()
    {
        nodes = [];
        Version++;
    }

    public override CollectionValue Copy(string typeName, bool isFixed = false) => new HeapValue(order) { nodes = [.. nodes], Comparer = Comparer };

    protected override void Take(CollectionValue other) => nodes = ((HeapValue)other).nodes;

    private void Append(object? element, object? priority)
    {
        if (Count >= Limits.Items)
            throw new ReadingStopped($"a collection has more than {Limits.Items} items");
        Budget.Current.Make(1);
        nodes.Add((element, priority));
    }

    private void RemoveAt(int place)
    {
        var last = nodes[nodes.Count - 1];
        nodes.RemoveAt(nodes.Count - 1);
        Version++;
        if (place == nodes.Count)
            return;
        if (place > 0 && order.Compare(last.Priority, nodes[place].Priority) < 0)
            MoveUp(last, place);
        else
            MoveDown(last, place);
    }

    private void MoveUp((object? Element, object? Priority) node, int place)
    {
        while (place > 0)
        {
            var parent = (place - 1) / Arity;
            if (order.Compare(node.Priority, nodes[parent].Priority) >= 0)
                break;
            nodes[place] = nodes[parent];
            place = parent;
        }

        nodes[place] = node;
    }

    private void MoveDown((object? Element, object? Priority) node, int place)
    {
        for (var child = (place * Arity) + 1; child < nodes.Count; child = (place * Arity) + 1)
        {
            var least = child;
            for (var next = child + 1; next < Math.Min(child + Arity, nodes.Count); next++)
            {
                if (order.Compare(nodes[next].Priority, nodes[least].Priority) < 0)
                    least = next;
            }

            if (order.Compare(node.Priority, nodes[least].Priority) <= 0)
                break;
            nodes[place] = nodes[least];
            place = least;
        }

        nodes[place] = node;
    }
}
