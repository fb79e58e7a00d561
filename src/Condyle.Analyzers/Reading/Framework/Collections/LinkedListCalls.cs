namespace Condyle.Analyzers.Reading;

/// <summary>Linked lists and their nodes.</summary>
internal static class LinkedListCalls
{
    public static void Register()
    {
        var list = new TypeMembers<LinkedListValue>(LinkedListValue.Type);
        list.Makes(Make);
        list.Asks("get_Count", (own, _) => own.Count);
        list.Asks("get_First", (own, _) => own.NodeAt(0));
        list.Asks("get_Last", (own, _) => own.NodeAt(own.Count - 1));
        list.Asks("get_IsReadOnly", (_, _) => false);
        list.Asks("Contains", (own, call) => Searching.IndexOf(own.Now(), call, 0, own.Count) >= 0);
        list.Asks("Find", (own, call) => own.NodeAt(Searching.IndexOf(own.Now(), call, 0, own.Count)));
        list.Asks("FindLast", (own, call) => own.NodeAt(own.Count - 1 - FromEnd(own, call)));
        list.Asks("CopyTo", (own, call) => Arrays.CopyTo(own.Now(), call));
        list.Changes("AddFirst", (own, call) => Insert(own, call, 0, call[1]));
        list.Changes("AddLast", (own, call) => Insert(own, call, own.Count, call[1]));
        list.Changes("Add", (own, call) => Insert(own, call, own.Count, call[1]));
        list.Changes("AddBefore", (own, call) => Insert(own, call, own.PlaceOf(Node(own, call)), call[2]));
        list.Changes("AddAfter", (own, call) => Insert(own, call, own.PlaceOf(Node(own, call)) + 1, call[2]));
        list.Changes("RemoveFirst", (own, _) => RemoveAt(own, 0));
        list.Changes("RemoveLast", (own, _) => RemoveAt(own, own.Count - 1));
        list.Changes("Remove", Remove);
        list.Resets("Clear", (own, _) =>
        {
            own.Clear();
            return null;
        });
        Nodes();
    }

    private static void Nodes()
    {
        var node = new TypeMembers<NodeValue>(CollectionValue.Generic + "LinkedListNode");
        node.Makes(call => new NodeValue(call[0]));
        node.Asks("get_Value", (own, _) => own.Value);
        node.Asks("get_List", (own, _) => own.List);
        node.Asks("get_Next", (own, call) => Beside(own, call, 1));
        node.Asks("get_Previous", (own, call) => Beside(own, call, -1));
        node.Asks("set_Value", (own, call) =>
        {
            call.Machine.Write(own.Held, 0, call[1]);
            return null;
        });
    }

    private static LinkedListValue Make(Invocation call)
    {
        var (items, areOpen) = Making.ItemsOf(call);
        var list = new LinkedListValue { IsOpen = areOpen };
        foreach (var item in items)
            list.Insert(list.Count, new NodeValue(item));
        list.Version = 0;
        return list;
    }

    private static NodeValue? Beside(NodeValue node, Invocation call, int step) => node.List switch
    {
        null => null,
        { IsOpen: true } => throw call.Unknown(),
        var list => list.NodeAt(list.PlaceOf(node) + step),
    };

    private static NodeValue Node(LinkedListValue own, Invocation call) => call[1] switch
    {
        null => throw new ThrownByCode("System.ArgumentNullException", "The node is null."),
        NodeValue node => node.List == own ? node : throw Stranger(),
        _ => throw call.Unknown(),
    };

    // Either a value, for which a node is made, or a node that stands in no list.
    private static object? Insert(LinkedListValue own, Invocation call, int place, object? added)
    {
        var isNode = added is NodeValue;
        var node = added as NodeValue ?? new NodeValue(added);
        if (node.List is not null)
            throw Stranger();
        own.Insert(place, node);
        return isNode ? null : node;
    }

    private static object? RemoveAt(LinkedListValue own, int place)
    {
        own.Remove(own.NodeAt(place) ?? throw LineCalls.Empty());
        return null;
    }

    private static object? Remove(LinkedListValue own, Invocation call)
    {
        if (call.Parameter(0)?.PlainName == "LinkedListNode")
        {
            own.Remove(Node(own, call));
            return null;
        }

        var found = own.NodeAt(Searching.IndexOf(own.Now(), call, 0, own.Count));
        if (found is not null)
            own.Remove(found);
        return found is not null;
    }

    private static int FromEnd(LinkedListValue own, Invocation call) =>
        Searching.IndexOf([.. own.Now().Reverse()], call, 0, own.Count) is >= 0 and var at ? at : own.Count;

    private static ThrownByCode Stranger() => new("System.InvalidOperationException", "The node doesn't stand where it should.");
}
