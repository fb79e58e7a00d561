namespace Condyle.Analyzers.Reading;

/// <summary>Sorted sets, dictionaries and lists. Where an order isn't known, as that of most texts, what is held isn't either.</summary>
internal static class SortedCalls
{
    public static void Register()
    {
        foreach (var type in new[] { SortedSetValue.Type, ImmutableNames.SortedSet, ImmutableNames.SortedSet + ".Builder" })
            Set(type);
        foreach (var type in new[] { SortedMapValue.Dictionary, SortedMapValue.SortedList, ImmutableNames.SortedDictionary, ImmutableNames.SortedDictionary + ".Builder" })
            Map(type);
    }

    public static SortedSetValue MakeSet(Invocation call, string type)
    {
        var comparer = Making.ComparerOf(call);
        var (items, areOpen) = Making.ItemsOf(call);
        var set = new SortedSetValue(Orders.Of(comparer, call.Machine), type) { Comparer = comparer, IsOpen = areOpen };
        Fill(set, () => items.ForEach(item => set.Add(item)));
        return set;
    }

    public static SortedMapValue MakeMap(Invocation call, string type)
    {
        var comparer = Making.ComparerOf(call);
        var (items, areOpen) = Making.ItemsOf(call);
        var map = new SortedMapValue(Orders.Of(comparer, call.Machine), type) { Comparer = comparer, IsOpen = areOpen };
        Fill(map, () => items.ForEach(item =>
        {
            var pair = item as TupleValue ?? throw call.Unknown();
            if (map.TryGet(pair.Items[0], out _))
                throw MapCalls.Twice();
            map.Set(pair.Items[0], pair.Items[1]);
        }));
        return map;
    }

    private static void Fill(CollectionValue made, Action fill)
    {
        try
        {
            fill();
        }
        catch (AnswerIsOpen)
        {
            made.IsOpen = true;
        }
    }

    private static void Set(string type)
    {
        var set = new TypeMembers<SortedSetValue>(type);
        set.Makes(call => MakeSet(call, type));
        set.Asks("get_Count", (own, _) => own.Count);
        set.Asks("get_IsEmpty", (own, _) => own.Count == 0);
        set.Asks("get_IsReadOnly", (own, _) => own.IsFixed);
        set.Asks("get_Comparer", (own, _) => own.Comparer ?? ComparerCalls.DefaultOrder);
        set.Asks("get_KeyComparer", (own, _) => own.Comparer ?? ComparerCalls.DefaultOrder);
        set.Asks("get_Item", (own, call) => own.List[Making.Place(ListCalls.Index(call, own.Count), own.Count)]);
        set.Asks("get_Min", (own, call) => own.Count > 0 ? own.List[0] : call.Default());
        set.Asks("get_Max", (own, call) => own.Count > 0 ? own.List[own.Count - 1] : call.Default());
        set.Asks("Contains", (own, call) => own.Has(call.Machine.Decide(call[1])));
        set.Asks("IndexOf", (own, call) => own.Find(call.Machine.Decide(call[1])));
        set.Asks("TryGetValue", (own, call) =>
        {
            var place = own.Find(call.Machine.Decide(call[1]));
            call.Out(2, place >= 0 ? own.List[place] : call.Method.ContainingType.Contains("Immutable") ? call[1] : call.Default());
            return place >= 0;
        });
        set.Asks("Reverse", (own, _) => new SequenceValue(() => own.Items().Reverse()));
        set.Asks("CopyTo", (own, call) => Arrays.CopyTo(own.List, call));
        set.Asks("ToImmutable", (own, _) => own.Copy(own.TypeName.Replace(".Builder", ""), isFixed: true));
        SetQuestions.Register(set, own => own.Items(), (own, item) => own.Has(item), own => new Equalities.OfOrder(own.Order));
        if (type == ImmutableNames.SortedSet)
            return;
        set.Asks("GetViewBetween", (own, call) => SortedViews.Of(own, call));
        set.Changes("Add", (own, call) => own.Add(call.Machine.Decide(call[1])));
        set.Changes("Remove", (own, call) => own.Remove(call.Machine.Decide(call[1])));
        set.Changes("RemoveWhere", RemoveWhere);
        set.Changes("UnionWith", (own, call) => Each(call, item => own.Add(item)));
        set.Changes("ExceptWith", (own, call) => ReferenceEquals(call[1], own) ? Clear(own) : Each(call, item => own.Remove(item)));
        set.Changes("IntersectWith", IntersectWith);
        set.Changes("SymmetricExceptWith", (own, call) => SymmetricExceptWith(own, call));
        set.Resets("Clear", (own, _) => Clear(own));
    }

    private static object? Each(Invocation call, Action<object?> change)
    {
        foreach (var item in SetQuestions.Other(call).ToList())
            change(item);
        return null;
    }

    private static object? Clear(SortedSetValue own)
    {
        own.Clear();
        return null;
    }

    private static object? RemoveWhere(SortedSetValue own, Invocation call)
    {
        var matches = call.Function(1);
        var removed = own.List.Where(item => call.Truth(matches.Invoke(call.Machine, item))).ToList();
        removed.ForEach(item => own.Remove(item));
        return removed.Count;
    }

    private static object? IntersectWith(SortedSetValue own, Invocation call)
    {
        if (ReferenceEquals(call[1], own))
            return null;
        var kept = new HashSet<int>(SetQuestions.Other(call).Select(own.Find).Where(place => place >= 0));
        own.List.Where((_, place) => !kept.Contains(place)).ToList().ForEach(item => own.Remove(item));
        return null;
    }

    private static object? SymmetricExceptWith(SortedSetValue own, Invocation call)
    {
        if (ReferenceEquals(call[1], own))
            return Clear(own);
        var other = new SortedSetValue(own.Order);
        Each(call, item => other.Add(item));
        foreach (var item in other.List)
            _ = own.Remove(item) || own.Add(item);
        return null;
    }

    private static void Map(string type)
    {
        var map = new TypeMembers<SortedMapValue>(type);
        map.Makes(call => MakeMap(call, type));
        MapCalls.Ask(map);
        map.Asks("get_Comparer", (own, _) => own.Comparer ?? ComparerCalls.DefaultOrder);
        map.Asks("get_KeyComparer", (own, _) => own.Comparer ?? ComparerCalls.DefaultOrder);
        if (type == ImmutableNames.SortedDictionary)
            return;
        MapCalls.Change(map);
        if (type != SortedMapValue.SortedList)
            return;
        map.Asks("IndexOfKey", (own, call) => Math.Max(-1, own.Find(MapCalls.Key(call, own, 1))));
        map.Asks("IndexOfValue", (own, call) => own.Values.ToList().FindIndex(value => call.Machine.Equality.Equals(value, call.Key(1))));
        map.Asks("GetKeyAtIndex", (own, call) => own.KeyAt(Making.Place(call.Whole(1), own.Count)));
        map.Asks("GetValueAtIndex", (own, call) => own.ValueAt(Making.Place(call.Whole(1), own.Count)));
        map.Changes("SetValueAtIndex", (own, call) =>
        {
            own.SetAt(Making.Place(call.Whole(1), own.Count), call[2]);
            return null;
        });
        map.Changes("RemoveAt", (own, call) =>
        {
            own.RemoveAt(Making.Place(call.Whole(1), own.Count));
            return null;
        });
        map.Asks("get_Capacity", (_, _) => OpenValue.Any);
        foreach (var name in new[] { "set_Capacity", "TrimExcess" })
            map.Changes(name, (_, _) => null);
    }
}
