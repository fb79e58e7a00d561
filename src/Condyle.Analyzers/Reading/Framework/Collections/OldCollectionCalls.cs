namespace Condyle.Analyzers.Reading;

/// <summary>The collections of <c>System.Collections</c>, which hold objects of any type.</summary>
internal static class OldCollectionCalls
{
    private const string Space = "System.Collections.";

    public static void Register()
    {
        Lists();
        Tables();
        foreach (var (type, isStack) in new[] { (Space + "Queue", false), (Space + "Stack", true) })
            LineCalls.Register(type, isStack, call => Plain(LineCalls.Make(call, type, isStack))).Asks("Clone", (own, _) => Plain(own.Copy(type)));
    }

    private static void Lists()
    {
        const string type = Space + "ArrayList";
        var list = new TypeMembers<ListValue>(type);
        ListCalls.Register(list, type, call => Plain(ListCalls.Make(type, call)));
        var add = FrameworkTable.Find(type, "Add")!;
        list.Changes("Add", (own, call) =>
        {
            add.Run(call);
            return own.Count - 1;
        });
        list.Asks("Clone", (own, _) => Plain(own.Copy(type)));
        foreach (var question in new[] { "get_IsFixedSize", "get_IsReadOnly", "get_IsSynchronized" })
            list.Asks(question, (_, _) => false);
    }

    private static void Tables()
    {
        var table = new TypeMembers<MapValue>(MapValue.OldTable);
        table.Makes(call => Plain(MapCalls.Make(call, MapValue.OldTable)));
        MapCalls.Ask(table);
        MapCalls.Change(table);
        table.Asks("get_Item", (own, call) => own.TryGet(MapCalls.Key(call, own, 1), out var value) ? value : null);
        foreach (var name in new[] { "Contains", "ContainsKey" })
            table.Asks(name, (own, call) => own.TryGet(MapCalls.Key(call, own, 1), out _));
        table.Asks("Clone", (own, _) => Plain(own.Copy(MapValue.OldTable)));
    }

    private static CollectionValue Plain(CollectionValue made)
    {
        made.TypeArguments = [];
        return made;
    }
}
