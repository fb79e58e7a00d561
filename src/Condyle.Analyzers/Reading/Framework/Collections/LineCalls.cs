namespace Condyle.Analyzers.Reading;

/// <summary>Queues and stacks.</summary>
internal static class LineCalls
{
    public static void Register()
    {
        foreach (var (type, isStack) in new[] { (LineValue.Queue, false), (LineValue.Stack, true) })
            Register(type, isStack, call => Make(call, type, isStack));
    }

    /// <summary>The members of one type of queue or stack.</summary>
    public static TypeMembers<LineValue> Register(string type, bool isStack, Func<Invocation, object?> make)
    {
        var line = new TypeMembers<LineValue>(type);
        line.Makes(make);
        Ask(line);
        line.Changes(isStack ? "Push" : "Enqueue", (own, call) => Add(own, call[1]));
        line.Changes(isStack ? "Pop" : "Dequeue", (own, _) => own.Count > 0 ? own.Leave() : throw Empty());
        line.Changes(isStack ? "TryPop" : "TryDequeue", (own, call) => Try(own, call, own.Leave));
        line.Resets("Clear", (own, _) => Clear(own));
        line.Changes("TrimExcess", (_, _) => null);
        line.Asks("EnsureCapacity", (_, _) => OpenValue.Any);
        return line;
    }

    public static void Ask(TypeMembers<LineValue> line)
    {
        line.Asks("get_Count", (own, _) => own.Count);
        line.Asks("get_IsEmpty", (own, _) => own.Count == 0);
        line.Asks("Peek", (own, _) => own.Count > 0 ? own.Next : throw Empty());
        line.Asks("TryPeek", (own, call) => Try(own, call, () => own.Next));
        line.Asks("ToArray", (own, _) => Arrays.Of(own.Items()));
        line.Asks("CopyTo", (own, call) => Arrays.CopyTo(own.Now(), call));
        line.Asks("Contains", (own, call) => Searching.IndexOf(own.Now(), call, 0, own.Count) >= 0);
    }

    public static ThrownByCode Empty() => new("System.InvalidOperationException", "The collection is empty.");

    public static LineValue Make(Invocation call, string type, bool isStack)
    {
        var (items, areOpen) = Making.ItemsOf(call);
        if (isStack)
            items.Reverse();
        return new LineValue(items, isStack, type) { IsOpen = areOpen };
    }

    private static object? Add(LineValue own, object? item)
    {
        own.Add(item);
        return null;
    }

    private static object? Clear(LineValue own)
    {
        own.Clear();
        return null;
    }

    private static object? Try(LineValue own, Invocation call, Func<object?> take)
    {
        var isThere = own.Count > 0;
        call.Out(1, isThere ? take() : call.Default());
        return isThere;
    }
}
