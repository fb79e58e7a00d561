namespace Condyle.Analyzers.Reading;

/// <summary>Hash sets.</summary>
internal static class SetCalls
{
    public static void Register()
    {
        foreach (var type in new[] { SetValue.Type, ImmutableNames.HashSet, ImmutableNames.HashSet + ".Builder", ImmutableNames.FrozenSet })
        {
            var set = new TypeMembers<SetValue>(type);
            set.Makes(call => Make(call, type));
            set.Asks("get_Count", (own, _) => own.Count);
            set.Asks("get_Comparer", (own, _) => Comparer(own));
            set.Asks("get_KeyComparer", (own, _) => Comparer(own));
            set.Asks("get_IsReadOnly", (own, _) => own.IsFixed);
            set.Asks("get_IsEmpty", (own, _) => own.Count == 0);
            set.Asks("Contains", (own, call) => own.Has(Key(own, call)));
            set.Asks("TryGetValue", TryGet);
            set.Asks("CopyTo", (own, call) => Arrays.CopyTo(own.Now(), call));
            SetQuestions.Register(set, own => own.Table.Entries().Select(entry => entry.Key), (own, item) => own.Has(item), own => own.Table.Rule);
            if (type is not (ImmutableNames.HashSet or ImmutableNames.FrozenSet))
                Change(set);
        }
    }

    /// <summary>A set of the items and with the comparer that a call is handed.</summary>
    public static SetValue Make(Invocation call, string type)
    {
        var comparer = Making.ComparerOf(call);
        var rule = Equalities.Of(comparer, call.Machine);
        var from = call.Count > 0 ? call[0] as SetValue : null;
        if (from is { IsOpen: false } && from.Comparer == comparer)
            return new SetValue(Copied(from.Table), type) { Comparer = comparer };
        var (items, areOpen) = Making.ItemsOf(call);
        areOpen |= !items.TrueForAll(KnownEquality.IsKnown);
        return new SetValue(areOpen ? [] : items, rule, type) { Comparer = comparer, IsOpen = areOpen };
    }

    /// <summary>The item that a call is about, where it is known as far as the set's comparer looks at it.</summary>
    public static object? Key(SetValue own, Invocation call) => own.Comparer is null ? call.Key(1) : call.Machine.Decide(call[1]);

    private static object? Comparer(SetValue own) => own.Comparer ?? ComparerCalls.Default;

    // The framework copies a set as it lies, places that were left included, unless that would waste too much room.
    private static HashTable Copied(HashTable table) => table.Copy(keepsLeft: Primes.RoomFor(2 * (table.Count + 1)) >= Primes.RoomOf(table.Places));

    private static void Change(TypeMembers<SetValue> set)
    {
        set.Changes("Add", (own, call) => own.Add(Key(own, call)));
        set.Changes("Remove", (own, call) => own.Remove(Key(own, call)));
        set.Changes("RemoveWhere", RemoveWhere);
        set.Changes("UnionWith", (own, call) => Each(call, item => own.Add(item)));
        set.Changes("ExceptWith", (own, call) => ReferenceEquals(call[1], own) ? Clear(own) : Each(call, item => own.Remove(item)));
        set.Changes("IntersectWith", IntersectWith);
        set.Changes("SymmetricExceptWith", SymmetricExceptWith);
        set.Resets("Clear", (own, _) => Clear(own));
        set.Changes("TrimExcess", (own, _) => own.Compact());
        set.Asks("EnsureCapacity", (_, _) => OpenValue.Any);
        set.Asks("ToImmutable", (own, _) => own.Copy(own.TypeName.Replace(".Builder", ""), isFixed: true));
    }

    private static object? Clear(SetValue own)
    {
        own.Clear();
        return null;
    }

    private static object? Each(Invocation call, Action<object?> change)
    {
        foreach (var item in SetQuestions.Other(call))
            change(item);
        return null;
    }

    private static object? TryGet(SetValue own, Invocation call)
    {
        var place = own.Table.Find(Key(own, call));
        call.Out(2, place >= 0 ? own.Table.At(place)!.Key : call.Method.ContainingType.Contains("Immutable") ? call[1] : call.Default());
        return place >= 0;
    }

    private static object? RemoveWhere(SetValue own, Invocation call)
    {
        var matches = call.Function(1);
        var removed = 0;
        for (var place = 0; place < own.Table.Places; place++)
        {
            call.Machine.Budget.Spend();
            if (own.Table.At(place) is { } entry && call.Truth(matches.Invoke(call.Machine, entry.Key)) && own.Remove(entry.Key))
                removed++;
        }

        return removed;
    }

    private static object? IntersectWith(SetValue own, Invocation call)
    {
        if (ReferenceEquals(call[1], own))
            return null;
        var kept = new HashSet<int>();
        foreach (var item in SetQuestions.Other(call))
        {
            if (own.Table.Find(item) is >= 0 and var place)
                kept.Add(place);
        }

        for (var place = 0; place < own.Table.Places; place++)
        {
            if (own.Table.At(place) is not null && !kept.Contains(place))
                own.Table.RemoveAt(place);
        }

        return null;
    }

    // Of a set each item goes or comes at once; of anything else what is there goes only when all have been seen, as one may come twice.
    private static object? SymmetricExceptWith(SetValue own, Invocation call)
    {
        if (ReferenceEquals(call[1], own))
            return Clear(own);
        if (own.Count == 0 || (call[1] is SetValue other && other.Comparer == own.Comparer))
        {
            var isUnion = own.Count == 0;
            return Each(call, item => _ = !isUnion && own.Remove(item) || own.Add(item));
        }

        var (added, going) = (new HashSet<int>(), new SortedSet<int>());
        foreach (var item in SetQuestions.Other(call))
        {
            var place = own.Table.Find(item);
            if (place < 0)
            {
                own.Add(item);
                added.Add(own.Table.Find(item));
            }
            else if (!added.Contains(place))
            {
                going.Add(place);
            }
        }

        foreach (var place in going)
            own.Table.RemoveAt(place);
        return null;
    }
}
