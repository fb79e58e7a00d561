namespace Condyle.Analyzers.Reading;

/// <summary>What all dictionaries have, hashed or sorted: values by keys.</summary>
internal static class MapCalls
{
    private const string Extensions = CollectionValue.Generic + "CollectionExtensions";

    public static void Register()
    {
        foreach (var type in new[] { MapValue.Type, ImmutableNames.Dictionary, ImmutableNames.Dictionary + ".Builder", ImmutableNames.FrozenDictionary })
        {
            var map = new TypeMembers<MapValue>(type);
            map.Makes(call => Make(call, type));
            Ask(map);
            map.Asks("get_Comparer", (own, _) => own.Comparer ?? ComparerCalls.Default);
            map.Asks("get_KeyComparer", (own, _) => own.Comparer ?? ComparerCalls.Default);
            if (type is ImmutableNames.Dictionary or ImmutableNames.FrozenDictionary)
                continue;
            Change(map);
            map.Changes("TrimExcess", (own, _) => own.Compact());
            map.Asks("EnsureCapacity", (_, _) => OpenValue.Any);
        }

        FrameworkTable.Add(Extensions, "GetValueOrDefault", call => call[0] switch
        {
            null => throw new ThrownByCode("System.ArgumentNullException", "The dictionary is null."),
            _ => Map(call, call[0]) is { } map ? map.TryGet(Key(call, map, 1), out var value) ? value : call.Count > 2 ? call[2] : call.Default(1) : throw call.Unknown(),
        });
        foreach (var name in new[] { "TryAdd", "Remove" })
            FrameworkTable.Add(Extensions, name, new FrameworkMethod(call => FrameworkTable.Find(FrameworkTypes.NameOf(call[0]) ?? "", name)?.Run(call) ?? throw call.Unknown()) { Changes = true });
        FrameworkTable.Add(Extensions, "AsReadOnly", call => call[0] is ListValue or ArrayValue
            ? new ReadOnlyValue("System.Collections.ObjectModel.ReadOnlyCollection", call[0]!)
            : new ReadOnlyValue("System.Collections.ObjectModel.ReadOnlyDictionary", call[0] ?? throw call.Unknown()));
    }

    public static MapValue Make(Invocation call, string type)
    {
        var comparer = Making.ComparerOf(call);
        var rule = Equalities.Of(comparer, call.Machine);
        if (call.Count > 0 && call[0] is MapValue { IsOpen: false } from && from.Comparer == comparer)
            return new MapValue(from.Table.Copy(keepsLeft: false), type) { Comparer = comparer };
        var (items, areOpen) = Making.ItemsOf(call);
        var map = new MapValue(new HashTable(rule), type) { Comparer = comparer, IsOpen = areOpen };
        foreach (var item in items)
        {
            if (item is not TupleValue { Items: [{ } key, var value] } || (comparer is null && !KnownEquality.IsKnown(key)))
            {
                map.IsOpen = true;
                return map;
            }

            if (map.TryGet(key, out _))
                throw Twice();
            map.Set(key, value);
        }

        return map;
    }

    public static void Ask<T>(TypeMembers<T> type)
        where T : CollectionValue, IMap
    {
        type.Asks("get_Count", (own, _) => own.Count);
        type.Asks("get_IsEmpty", (own, _) => own.Count == 0);
        type.Asks("get_IsReadOnly", (own, _) => own.IsFixed);
        type.Asks("get_Item", (own, call) => own.TryGet(Key(call, own, 1), out var value) ? value : throw new ThrownByCode("System.Collections.Generic.KeyNotFoundException", "The key isn't in the dictionary."));
        type.Asks("ContainsKey", (own, call) => own.TryGet(Key(call, own, 1), out _));
        type.Asks("ContainsValue", (own, call) => own.HeldValues.ToList() is var values && values.TrueForAll(KnownEquality.IsKnown) ? values.Contains(call.Key(1), call.Machine.Equality) : throw call.Unknown());
        type.Asks("Contains", (own, call) => call.Key(1) is TupleValue pair && own.TryGet(pair.Items[0], out var value) && call.Machine.Equality.Equals(value, pair.Items[1]));
        type.Asks("TryGetValue", TryGet);
        type.Asks("GetValueOrDefault", (own, call) => own.TryGet(Key(call, own, 1), out var value) ? value : call.Count > 2 ? call[2] : call.Default(1));
        type.Asks("get_Keys", (own, call) => new ViewValue(own.TypeName + ".KeyCollection", own, () => own.Keys, key => own.TryGet(key, out _)));
        type.Asks("get_Values", (own, call) => new ViewValue(own.TypeName + ".ValueCollection", own, () => own.Values, value => own.Values.Contains(value, call.Machine.Equality)));
        type.Asks("CopyTo", (own, call) => Arrays.CopyTo(own.Now(), call));
    }

    public static void Change<T>(TypeMembers<T> type)
        where T : CollectionValue, IMap
    {
        type.Changes("Add", Add);
        type.Changes("TryAdd", (own, call) =>
        {
            if (own.TryGet(Key(call, own, 1), out _))
                return false;
            own.Set(call[1], call[2]);
            return true;
        });
        type.Changes("set_Item", (own, call) =>
        {
            own.Set(Key(call, own, 1), call[2]);
            return null;
        });
        type.Changes("Remove", Remove);
        type.Resets("Clear", (own, _) =>
        {
            own.Clear();
            return null;
        });
        type.Asks("ToImmutable", (own, _) => own.Copy(own.TypeName.Replace(".Builder", ""), isFixed: true));
    }

    public static ThrownByCode Twice() => new("System.ArgumentException", "The key is in the dictionary already.");

    /// <summary>A key, where it is known as far as the dictionary looks at it.</summary>
    public static object? Key(Invocation call, IMap map, int index)
    {
        var key = call.Machine.Decide(call[index]);
        if (key is null)
            throw new ThrownByCode("System.ArgumentNullException", "A key is null.");
        return map is MapValue { Comparer: not null } or SortedMapValue ? key : call.Key(index);
    }

    private static IMap? Map(Invocation call, object? value) => value switch
    {
        ReadOnlyValue { Inner: var inner } => Map(call, inner),
        ICollectionValue { IsOpen: true } => null,
        _ => value as IMap,
    };

    // A pair may be added as a whole.
    private static object? Add<T>(T own, Invocation call)
        where T : CollectionValue, IMap
    {
        if (call.Count == 2)
        {
            var pair = call[1] as TupleValue ?? throw call.Unknown();
            call = new Invocation(call.Machine, call.Method, [own, .. pair.Items]);
        }

        var key = Key(call, own, 1);
        if (own.TryGet(key, out _))
            throw Twice();
        own.Set(key, call[2]);
        return null;
    }

    private static object? Remove<T>(T own, Invocation call)
        where T : CollectionValue, IMap
    {
        if (call.Method.Parameters is [{ PlainName: "KeyValuePair" }])
        {
            var pair = call.Key(1) as TupleValue ?? throw call.Unknown();
            return own.TryGet(pair.Items[0], out var held) && call.Machine.Equality.Equals(held, pair.Items[1]) && own.Remove(pair.Items[0]);
        }

        var key = Key(call, own, 1);
        var isThere = own.TryGet(key, out var value);
        call.Out(2, isThere ? value : call.Count > 2 ? call.Default(1) : null);
        if (isThere)
            own.Remove(key);
        return isThere;
    }

    private static object? TryGet<T>(T own, Invocation call)
        where T : CollectionValue, IMap
    {
        var isThere = own.TryGet(Key(call, own, 1), out var value);
        call.Out(2, isThere ? value : call.Default(1));
        return isThere;
    }
}
