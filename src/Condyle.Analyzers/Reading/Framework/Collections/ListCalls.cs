namespace Condyle.Analyzers.Reading;

/// <summary>Lists: what they hold, and what is put in and taken out.</summary>
internal static class ListCalls
{
    /// <summary>The types that have a list's members, or some of them.</summary>
    public static readonly IReadOnlyList<string> Types =
    [
        ListValue.Type, "System.Collections.ObjectModel.Collection", "System.Collections.ObjectModel.ObservableCollection",
        ImmutableNames.Array, ImmutableNames.List, ImmutableNames.Array + ".Builder", ImmutableNames.List + ".Builder",
    ];

    public static void Register()
    {
        foreach (var type in Types)
            Register(new TypeMembers<ListValue>(type), type, call => Make(type, call));

        new TypeMembers<ListValue>(ListValue.Type).Asks("AsReadOnly", (own, _) => new ReadOnlyValue("System.Collections.ObjectModel.ReadOnlyCollection", own));
    }

    /// <summary>The members of one type of list.</summary>
    public static void Register(TypeMembers<ListValue> list, string type, Func<Invocation, object?> make)
    {
        list.Makes(make);
        Ask(list);
        if (type is not (ImmutableNames.Array or ImmutableNames.List))
            Change(list);
    }

    public static ListValue Make(string type, Invocation call)
    {
        var (items, areOpen) = Making.ItemsOf(call);
        return new ListValue(items, type) { IsOpen = areOpen };
    }

    private static void Ask(TypeMembers<ListValue> list)
    {
        foreach (var name in new[] { "get_Count", "get_Length" })
            list.Asks(name, (own, _) => own.Count);
        list.Asks("get_Capacity", (_, _) => OpenValue.Any);
        list.Asks("get_Item", (own, call) => own.List[Place(own, Index(call, own.Count))]);
        list.Asks("get_IsReadOnly", (own, _) => own.IsFixed);
        list.Asks("GetRange", (own, call) => Range(own, Making.Stretch(call.Whole(1), call.Whole(2), own.Count)));
        list.Asks("Slice", (own, call) => Range(own, call.Count > 2 ? Making.Stretch(call.Whole(1), call.Whole(2), own.Count) : Making.Stretch(call.Whole(1), own.Count - call.Whole(1), own.Count)));
        list.Asks("ToArray", (own, call) => Arrays.Of(own.List, call.Method.TypeArguments.FirstOrDefault()));
        list.Asks("ConvertAll", (own, call) => call.Function(1) is var convert ? new ListValue(Searching.Each(own.List, item => convert.Invoke(call.Machine, item)), own.TypeName) { IsFixed = own.IsFixed } : null);
        list.Asks("ForEach", ForEach);
        list.Asks("CopyTo", (own, call) => Arrays.CopyTo(own.List, call));
        Searching.Register(list, own => own.List);
    }

    /// <summary>Refuses an index as the type does: an immutable array is an array in that.</summary>
    public static int Place(ListValue own, int at) =>
        at >= 0 && at < own.Count ? at : throw (own.TypeName.StartsWith(ImmutableNames.Array, StringComparison.Ordinal) ? Making.OutOfArray() : Making.OutOfRange());

    private static void Change(TypeMembers<ListValue> list)
    {
        list.Changes("set_Item", (own, call) => Change(own, items => items[Making.Place(call.Whole(1), items.Count)] = call[2]));
        list.Changes("Add", (own, call) => Change(own, items => Sequences.AddLimited(items, call[1])));
        list.Changes("AddRange", (own, call) => AddRange(own, call, own.Count, call[1]));
        list.Changes("InsertRange", (own, call) => AddRange(own, call, call.Whole(1), call[2]));
        list.Changes("Insert", (own, call) => Move(own, call, items => Sequences.InsertLimited(items, Making.Place(call.Whole(1), items.Count + 1), call[2])));
        list.Changes("RemoveAt", (own, call) => Move(own, call, items => items.RemoveAt(Making.Place(call.Whole(1), items.Count))));
        list.Changes("RemoveRange", (own, call) => Making.Stretch(call.Whole(1), call.Whole(2), own.Count) is var (start, count) && count > 0 ? Move(own, call, items => items.RemoveRange(start, count)) : null);
        list.Changes("Remove", Remove);
        list.Changes("RemoveAll", RemoveAll);
        list.Changes("Reverse", (own, call) => Stretch(own, call) is var (start, count) ? Move(own, call, items => items.Reverse(start, count)) : null);
        list.Changes("Sort", Sort);
        list.Resets("Clear", (own, _) => Change(own, items => items.Clear()));
        foreach (var name in new[] { "TrimExcess", "set_Capacity" })
            list.Asks(name, (_, _) => null);
        list.Asks("EnsureCapacity", (_, _) => OpenValue.Any);
        list.Asks("ToImmutable", (own, _) => own.Copy(own.TypeName.Replace(".Builder", ""), isFixed: true));
        list.Changes("MoveToImmutable", (own, _) => Moved(own));
        list.Changes("DrainToImmutable", (own, _) => Moved(own));
    }

    /// <summary>An index, from the end of a count perhaps.</summary>
    public static int Index(Invocation call, int count) => call[1] is IndexValue index ? index.Of(count) : call.Whole(1);

    private static ListValue Range(ListValue own, (int Start, int Count) stretch)
    {
        Budget.Current.Make(stretch.Count);
        return new ListValue(own.List.GetRange(stretch.Start, stretch.Count), own.TypeName) { IsFixed = own.IsFixed };
    }

    private static CollectionValue Moved(ListValue own)
    {
        var moved = own.Copy(own.TypeName.Replace(".Builder", ""), isFixed: true);
        Change(own, items => items.Clear());
        return moved;
    }

    private static object? Change(ListValue own, Action<List<object?>> change)
    {
        change(own.List);
        own.Version++;
        return null;
    }

    /// <summary>A change for which items have to move up or down.</summary>
    private static object? Move(ListValue own, Invocation call, Action<List<object?>> change)
    {
        call.Machine.Budget.Spend(own.Count / Sequences.ItemsMovedInAStep);
        return Change(own, change);
    }

    private static object? AddRange(ListValue own, Invocation call, int at, object? items)
    {
        if (items is null)
            throw new ThrownByCode("System.ArgumentNullException", "The items that are added are null.");
        if (at < 0 || at > own.Count)
            throw Making.OutOfRange();
        if (ReferenceEquals(items, own))
            items = new ListValue(own.List);

        // Lazy items are added one by one: what makes them may look at the list.
        if (items is SequenceValue)
        {
            foreach (var item in Sequences.Of(items, call.Machine)!)
            {
                Sequences.InsertLimited(own.List, Making.Place(at++, own.Count + 1), item);
                own.Version++;
            }

            return null;
        }

        var more = Sequences.ListOf(items, call.Machine) ?? throw call.Unknown();
        foreach (var item in more)
            Sequences.InsertLimited(own.List, at++, item);
        own.Version += Math.Sign(more.Count);
        return null;
    }

    private static object? Remove(ListValue own, Invocation call)
    {
        var at = Searching.IndexOf(own.List, call, 0, own.Count);
        if (at >= 0)
            Move(own, call, items => items.RemoveAt(at));
        return at >= 0;
    }

    private static object? RemoveAll(ListValue own, Invocation call)
    {
        var matches = call.Function(1);
        var kept = new List<object?>();
        foreach (var item in own.List.ToArray())
        {
            call.Machine.Budget.Spend();
            if (!call.Truth(matches.Invoke(call.Machine, item)))
                kept.Add(item);
        }

        var removed = own.Count - kept.Count;
        if (removed > 0)
            Move(own, call, items => { items.Clear(); items.AddRange(kept); });
        return removed;
    }

    private static (int Start, int Count) Stretch(ListValue own, Invocation call) =>
        call.Count > 2 ? Making.Stretch(call.Whole(1), call.Whole(2), own.Count) : (0, own.Count);

    private static object? Sort(ListValue own, Invocation call)
    {
        var (start, count) = call.Count > 3 ? Stretch(own, call) : (0, own.Count);
        var order = Orders.Of(call.Count > 3 ? call[3] : call[1], call.Machine);
        if (call.Count == 2 && call[1] is null && call.Parameter(0)?.PlainName == "Comparison")
            throw new ThrownByCode("System.ArgumentNullException", "The comparison is null.");
        own.Version++;
        try
        {
            Sorting.Sort(own.List, start, count, order);
        }
        catch (AnswerIsOpen open) when (open is not SequenceIsOpen)
        {
            // The items are still there, each somewhere.
            for (var i = start; i < start + count; i++)
                own.List[i] = Opens.Of(FrameworkTypes.ItemsOf(own), call.Machine);
        }

        return null;
    }

    private static object? ForEach(ListValue own, Invocation call)
    {
        var action = call.Function(1);
        foreach (var item in own)
        {
            call.Machine.Budget.Spend();
            action.Invoke(call.Machine, item);
        }

        return null;
    }
}
