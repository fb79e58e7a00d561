namespace Condyle.Analyzers.Reading;

/// <summary>A linked list of nodes.</summary>
internal sealed class LinkedListValue() : CollectionValue(LinkedListValue.Type)
{
    public const string Type = Generic + "LinkedList";

    public List<NodeValue> Nodes { get; private set; } = [];

    public override int Count => Nodes.Count;

    public override IEnumerable<object?> Items()
    {
        for (var i = 0; i < Nodes.Count; i++)
            yield return Nodes[i].Value;
    }

    public NodeValue? NodeAt(int place) => place >= 0 && place < Nodes.Count ? Nodes[place] : null;

    /// <summary>The place of a node.</summary>
    public int PlaceOf(NodeValue node)
    {
        Budget.Current.Spend(Count / Sequences.ItemsMovedInAStep);
        return Nodes.IndexOf(node);
    }

    public void Insert(int place, NodeValue node)
    {
        if (Count >= Limits.Items)
            throw new ReadingStopped($"a collection has more than {Limits.Items} items");
        Budget.Current.Make(1);
        Budget.Current.Spend(Count / Sequences.ItemsMovedInAStep);
        node.List = this;
        Nodes.Insert(place, node);
        Version++;
    }

    public void Remove(NodeValue node)
    {
        Budget.Current.Spend(Count / Sequences.ItemsMovedInAStep);
        node.List = null;
        Nodes.Remove(node);
        Version++;
    }

    public void Clear()
    {
        Nodes.ForEach(node => node.List = null);
        Nodes = [];
        Version++;
    }

    public override CollectionValue Copy(string typeName, bool isFixed = false) => new LinkedListValue { Nodes = [.. Nodes] };

    protected override void Take(CollectionValue other)
    {
        Nodes.ForEach(node => node.List = null);
        Nodes = ((LinkedListValue)other).Nodes;
        Nodes.ForEach(node => node.List = this);
    }
}

/// <summary>A node of a linked list.</summary>
internal sealed class NodeValue(object? value) : IFrameworkValue
{
    public string TypeName => CollectionValue.Generic + "LinkedListNode";

    /// <summary>The list that it stands in; none when it was taken out.</summary>
    public LinkedListValue? List { get; set; }

    /// <summary>What it holds, as a place that can be written.</summary>
    public object?[] Held { get; } = [value];

    public object? Value => Held[0];
}
