namespace Condyle.Analyzers.Reading;

/// <summary>Immutable collections: what changes one gives a changed copy, made by the same member of the mutable collection.</summary>
internal static class ImmutableCalls
{
    public static void Register()
    {
        foreach (var type in new[] { ImmutableNames.Array, ImmutableNames.List })
            List(type);
        Set(ImmutableNames.HashSet, SetValue.Type);
        Set(ImmutableNames.SortedSet, SortedSetValue.Type);
        Map(ImmutableNames.Dictionary, MapValue.Type);
        Map(ImmutableNames.SortedDictionary, SortedMapValue.Dictionary);
        Line(ImmutableNames.Queue, LineValue.Queue, isStack: false);
        Line(ImmutableNames.Stack, LineValue.Stack, isStack: true);
    }

    /// <summary>An immutable collection of some type, with what a call hands over: items one by one, in a sequence, none, and a comparer perhaps.</summary>
    public static CollectionValue Make(string type, Invocation call)
    {
        CollectionValue made = type switch
        {
            ImmutableNames.Array or ImmutableNames.List => new ListValue([], type),
            ImmutableNames.HashSet or ImmutableNames.FrozenSet => SetCalls.Make(Comparers(call), type),
            ImmutableNames.SortedSet => SortedCalls.MakeSet(Comparers(call), type),
            ImmutableNames.Dictionary or ImmutableNames.FrozenDictionary => MapCalls.Make(Comparers(call), type),
            ImmutableNames.SortedDictionary => SortedCalls.MakeMap(Comparers(call), type),
            _ => new LineValue([], type == ImmutableNames.Stack, type),
        };
        var name = made switch { LineValue { IsStack: true } => "Push", LineValue => "Enqueue", _ => "Add" };
        foreach (var item in Items(call))
        {
            if (item is null || made.IsOpen)
                made.IsOpen = true;
            else if (made is IMap map && item.Value is TupleValue pair && type != ImmutableNames.FrozenDictionary)
                Add(call, map, pair.Items[0], pair.Items[1]);
            else if (made is IMap frozen && item.Value is TupleValue { Items: [var key, var value] })
                frozen.Set(key, value);
            else
                Change(call, made, MutableOf(type), name, [item.Value]);
        }

        var copy = made.Copy(type, isFixed: true);
        copy.IsOpen = made.IsOpen;
        return copy;
    }

    // Only the comparer counts for the empty collection.
    private static Invocation Comparers(Invocation call)
    {
        var places = Enumerable.Range(0, call.Count).Where(at => call.Parameter(at)?.PlainName is "IEqualityComparer" or "IComparer").ToList();
        return new Invocation(call.Machine, call.Method with { Parameters = [.. places.Select(at => call.Parameter(at)!)] }, [.. places.Select(at => call[at])]);
    }

    /// <summary>An item, or null where from here on they aren't known.</summary>
    private static IEnumerable<Item?> Items(Invocation call)
    {
        for (var i = 0; i < call.Count; i++)
        {
            var type = call.Parameter(i);
            if (type?.PlainName is "IEqualityComparer" or "IComparer")
                continue;
            if (type is not { Shape: TypeShape.Array } and not { PlainName: "IEnumerable" or "ReadOnlySpan" or "Span" or "ImmutableArray" })
            {
                yield return new Item(call[i]);
                continue;
            }

            if (call[i] is null)
                throw new ThrownByCode("System.ArgumentNullException", "The items of a collection are null.");
            if (Sequences.ListOf(call[i], call.Machine) is not { } items)
            {
                yield return null;
                yield break;
            }

            foreach (var item in items)
                yield return new Item(item);
        }
    }

    private static string MutableOf(string type) => type switch
    {
        ImmutableNames.Array or ImmutableNames.List => ListValue.Type,
        ImmutableNames.HashSet or ImmutableNames.FrozenSet => SetValue.Type,
        ImmutableNames.SortedSet => SortedSetValue.Type,
        ImmutableNames.Dictionary or ImmutableNames.FrozenDictionary => MapValue.Type,
        ImmutableNames.SortedDictionary => SortedMapValue.Dictionary,
        ImmutableNames.Stack => LineValue.Stack,
        _ => LineValue.Queue,
    };

    private static void Change(Invocation call, CollectionValue made, string mutable, string name, object?[] arguments) =>
        FrameworkTable.Find(mutable, name)!.Call(new Invocation(call.Machine, call.Method, [made, .. arguments]));

    private static void Statics(string type)
    {
        FrameworkTable.Add(type, "get_Empty", call => Make(type, call));
        FrameworkTable.Add(type, "Create", call => Make(type, call));
        FrameworkTable.Add(type, "CreateRange", call => call.Arguments.Any(argument => argument is FunctionValue) ? throw call.Unknown() : Make(type, call));
        FrameworkTable.Add(type, "To" + type.Substring(type.LastIndexOf('.') + 1), call => call[0] is CollectionValue { IsOpen: false } own && own.TypeName == type && call.Count == 1 ? own
            : call[0] is CollectionValue { IsOpen: false } builder && builder.TypeName == type + ".Builder" && call.Count == 1 ? builder.Copy(type, isFixed: true)
            : call.Arguments.Any(argument => argument is FunctionValue) ? throw call.Unknown()
            : Make(type, call));
        FrameworkTable.Add(type, "CreateBuilder", call => Make(type, Comparers(call)).Copy(type + ".Builder"));
        FrameworkTable.Add(type, "ToBuilder", call => call[0] is CollectionValue { IsOpen: false } own ? own.Copy(type + ".Builder") : throw call.Unknown());
        FrameworkTable.Add(type, "get_IsEmpty", call => call[0] is CollectionValue { IsOpen: false } own ? own.Count == 0 : throw call.Unknown());
    }

    private static void Copies(string type, string mutable, params string[] names)
    {
        foreach (var name in names)
            Copies(type, name, (call, copy) => FrameworkTable.Find(mutable, name)!.Run(new Invocation(call.Machine, call.Method, [copy, .. call.Arguments.Skip(1)])));
    }

    private static void Copies(string type, string name, Action<Invocation, CollectionValue> change) => FrameworkTable.Add(type, name, call =>
    {
        var own = call[0] is CollectionValue { IsOpen: false } known ? known : throw call.Unknown();
        call.Machine.Budget.Make(own.Count);
        var copy = own.Copy(type);
        change(call, copy);
        return copy.IsOpen ? throw call.Unknown() : copy.Copy(type, isFixed: true);
    });

    private static void List(string type)
    {
        Statics(type);
        Copies(type, ListValue.Type, "Add", "AddRange", "Insert", "InsertRange", "Remove", "RemoveAt", "RemoveAll", "Clear", "Reverse", "Sort");
        Copies(type, "SetItem", (call, copy) => FrameworkTable.Find(ListValue.Type, "set_Item")!.Run(new Invocation(call.Machine, call.Method, [copy, call[1], call[2]])));
        Copies(type, "RemoveRange", (call, copy) =>
        {
            if (call[1] is int)
                FrameworkTable.Find(ListValue.Type, "RemoveRange")!.Run(new Invocation(call.Machine, call.Method, [copy, call[1], call[2]]));
            else
                call.Items(1).ToList().ForEach(item => FrameworkTable.Find(ListValue.Type, "Remove")!.Run(new Invocation(call.Machine, call.Method, [copy, item])));
        });
        Copies(type, "Replace", (call, copy) =>
        {
            var at = Searching.IndexOf(((ListValue)copy).List, call, 0, copy.Count);
            ((ListValue)copy).List[at >= 0 ? at : throw new ThrownByCode("System.ArgumentException", "The item that is replaced isn't there.")] = call[2];
        });
        FrameworkTable.Add(type, "AsSpan", call => call[0] is ListValue { IsOpen: false } own ? new SpanValue([.. own.List], 0, own.Count) : throw call.Unknown());
        FrameworkTable.Add(type, "get_IsDefault", call => call[0] is ListValue ? false : throw call.Unknown());
        FrameworkTable.Add(type, "get_IsDefaultOrEmpty", call => call[0] is ListValue { IsOpen: false } own ? own.Count == 0 : throw call.Unknown());
    }

    private static void Set(string type, string mutable)
    {
        Statics(type);
        Copies(type, mutable, "Add", "Remove", "Clear");
        foreach (var (name, changes) in new[] { ("Union", "UnionWith"), ("Except", "ExceptWith"), ("Intersect", "IntersectWith"), ("SymmetricExcept", "SymmetricExceptWith") })
            Copies(type, name, (call, copy) => FrameworkTable.Find(mutable, changes)!.Run(new Invocation(call.Machine, call.Method, [copy, call[1]])));
    }

    // Adding a key again is no error where it stands for the same value.
    private static void Map(string type, string mutable)
    {
        Statics(type);
        Copies(type, mutable, "Remove", "Clear");
        Copies(type, "Add", (call, copy) => Add(call, (IMap)copy, call[1], call[2]));
        Copies(type, "AddRange", (call, copy) => Pairs(call).ForEach(pair => Add(call, (IMap)copy, pair.Items[0], pair.Items[1])));
        Copies(type, "SetItem", (call, copy) => ((IMap)copy).Set(MapCalls.Key(call, (IMap)copy, 1), call[2]));
        Copies(type, "SetItems", (call, copy) => Pairs(call).ForEach(pair => ((IMap)copy).Set(pair.Items[0], pair.Items[1])));
        FrameworkTable.Add(type, "TryGetKey", call =>
        {
            var own = call[0] is CollectionValue { IsOpen: false } and IMap map ? map : throw call.Unknown();
            var key = own.Keys.FirstOrDefault(key => Equalities.Of(null, call.Machine).Equals(key, call.Key(1)));
            call.Out(2, key ?? call[1]);
            return key is not null;
        });
        Copies(type, "RemoveRange", (call, copy) => call.Items(1).ToList().ForEach(key => ((IMap)copy).Remove(key)));
        FrameworkTable.Add(type + ".Builder", "AddRange", new FrameworkMethod(call =>
        {
            var own = call[0] is CollectionValue { IsOpen: false } and IMap map ? map : throw call.Unknown();
            call.Machine.Journal.Changing((CollectionValue)own);
            Pairs(call).ForEach(pair => Add(call, own, pair.Items[0], pair.Items[1]));
            return null;
        })
        {
            Changes = true,
        });
    }

    private static void Add(Invocation call, IMap map, object? key, object? value)
    {
        if (!KnownEquality.IsKnown(key))
            throw call.Unknown();
        if (!map.TryGet(key, out var held))
            map.Set(key, value);
        else if (!call.Machine.Equality.Equals(held, value))
            throw MapCalls.Twice();
    }

    private static List<TupleValue> Pairs(Invocation call) => [.. call.Items(1).Select(item => item as TupleValue ?? throw call.Unknown())];

    private static void Line(string type, string mutable, bool isStack)
    {
        Statics(type);
        LineCalls.Ask(new TypeMembers<LineValue>(type));
        Copies(type, mutable, isStack ? "Push" : "Enqueue", "Clear");
        Copies(type, isStack ? "Pop" : "Dequeue", (call, copy) =>
        {
            var left = copy.Count > 0 ? ((LineValue)copy).Leave() : throw LineCalls.Empty();
            call.Out(1, left);
        });
    }

    private sealed record Item(object? Value);
}
