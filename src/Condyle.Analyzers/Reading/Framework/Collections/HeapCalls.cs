namespace Condyle.Analyzers.Reading;

/// <summary>Priority queues.</summary>
internal static class HeapCalls
{
    public static void Register()
    {
        var heap = new TypeMembers<HeapValue>(HeapValue.Type);
        heap.Makes(Make);
        heap.Asks("get_Count", (own, _) => own.Count);
        heap.Asks("get_Comparer", (own, _) => own.Comparer ?? ComparerCalls.DefaultOrder);
        heap.Asks("Peek", (own, _) => own.Count > 0 ? own.Root.Element : throw LineCalls.Empty());
        heap.Asks("TryPeek", (own, call) => Give(own.Count > 0 ? own.Root : null, call, 1));
        heap.Asks("get_UnorderedItems", (own, _) => new ViewValue(HeapValue.Type + ".UnorderedItemsCollection", own, own.Items));
        heap.Changes("Enqueue", (own, call) => Enqueue(own, call[1], call.Machine.Decide(call[2])));
        heap.Changes("Dequeue", (own, _) => own.Count > 0 ? own.Dequeue().Element : throw LineCalls.Empty());
        heap.Changes("TryDequeue", (own, call) => Give(own.Count > 0 ? own.Dequeue() : null, call, 1));
        heap.Changes("EnqueueDequeue", (own, call) => own.Count > 0 && own.IsBehindRoot(call.Machine.Decide(call[2])) ? own.Replace(call[1], call.Machine.Decide(call[2])) : call[1]);
        heap.Changes("DequeueEnqueue", (own, call) => own.Count > 0 ? own.Replace(call[1], call.Machine.Decide(call[2])) : throw LineCalls.Empty());
        heap.Changes("EnqueueRange", EnqueueRange);
        heap.Changes("Remove", (own, call) => Give(own.Remove(call.Key(1), Equalities.Of(call[4], call.Machine)), call, 2));
        heap.Resets("Clear", (own, _) =>
        {
            own.Clear();
            return null;
        });
        heap.Asks("EnsureCapacity", (_, _) => OpenValue.Any);
        heap.Changes("TrimExcess", (_, _) => null);
    }

    private static HeapValue Make(Invocation call)
    {
        var comparer = Making.ComparerOf(call);
        var (items, areOpen) = Making.ItemsOf(call);
        var heap = new HeapValue(Orders.Of(comparer, call.Machine)) { Comparer = comparer, IsOpen = areOpen };
        if (items.Count > 0)
            heap.Fill(items.Select(item => Pair(item, call)));
        return heap;
    }

    private static (object?, object?) Pair(object? item, Invocation call) => item is TupleValue { Items: [var element, var priority] } ? (element, priority) : throw call.Unknown();

    private static object? Enqueue(HeapValue own, object? element, object? priority)
    {
        own.Enqueue(element, priority);
        return null;
    }

    // Items with priorities, or elements that all have the same one.
    private static object? EnqueueRange(HeapValue own, Invocation call)
    {
        var items = call.Items(1).Select(item => call.Count > 2 ? (item, call.Machine.Decide(call[2])) : Pair(item, call));
        if (own.Count == 0)
        {
            own.Fill(items.ToList());
            return null;
        }

        foreach (var (element, priority) in items)
            own.Enqueue(element, priority);
        return null;
    }

    private static object? Give((object? Element, object? Priority)? node, Invocation call, int at)
    {
        call.Out(at, node is { } given ? given.Element : call.Default());
        call.Out(at + 1, node is { } known ? known.Priority : call.Default(1));
        return node is not null;
    }
}
