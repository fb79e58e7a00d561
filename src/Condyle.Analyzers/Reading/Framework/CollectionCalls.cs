namespace Condyle.Analyzers.Reading;

/// <summary>Lists, sets, queues, stacks and arrays.</summary>
internal static class CollectionCalls
{
    private const string Space = "System.Collections.Generic.";
    private const int ItemsMovedInAStep = 512;
    private const int ItemsComparedInAStep = 4;
    private static readonly string[] Readers =
        [Space + "List.", Space + "IReadOnlyList.", Space + "IList.", Space + "ICollection.", Space + "IReadOnlyCollection.", "System.Array.", Space + "HashSet.", Space + "Queue.", Space + "Stack.", "System.Collections.Immutable.ImmutableArray."];

    public static void Register()
    {
        foreach (var (name, kind) in new[] { ("List", CollectionKind.List), ("HashSet", CollectionKind.Set), ("Queue", CollectionKind.Queue), ("Stack", CollectionKind.Stack) })
            FrameworkTable.Open(Space + name + "..ctor", (machine, arguments) => New(machine, kind, arguments));
        foreach (var type in Readers)
        {
            FrameworkTable.Open(type + "get_Count", (_, arguments) => CountOf(arguments[0]));
            FrameworkTable.Open(type + "get_Length", (_, arguments) => CountOf(arguments[0]));
            FrameworkTable.Open(type + "get_Item", (_, arguments) => Item(arguments[0], arguments[1]));
            FrameworkTable.Open(type + "set_Item", (machine, arguments) => SetItem(machine, arguments[0], arguments[1], arguments[2]));
            FrameworkTable.Open(type + "Contains", (machine, arguments) => Contains(machine, arguments[0], arguments[1]));
            FrameworkTable.Open(type + "Add", (machine, arguments) => Add(machine, arguments[0], arguments[1]));
            FrameworkTable.Open(type + "ToArray", (machine, arguments) => Sequences.ListOf(arguments[0], machine) is { } items ? new ArrayValue([.. items]) : OpenValue.Any);
        }

        FrameworkTable.Open(Space + "List.AddRange", (machine, arguments) => Sequences.ListOf(arguments[1], machine) is { } more
            ? Change(machine, arguments[0], list => { foreach (var item in more) Sequences.AddLimited(list, item); return null; })
            : Lose(machine, arguments[0]));
        FrameworkTable.Open(Space + "List.Insert", (machine, arguments) => Arithmetic.AsIndex(arguments[1]) is { } at
            ? Move(machine, arguments[0], list => { Check(at, list.Count + 1); Sequences.InsertLimited(list, at, arguments[2]); return null; })
            : Lose(machine, arguments[0]));
        FrameworkTable.Open(Space + "List.RemoveAt", (machine, arguments) => Arithmetic.AsIndex(arguments[1]) is { } at
            ? Move(machine, arguments[0], list => { Check(at, list.Count); list.RemoveAt(at); return null; })
            : Lose(machine, arguments[0]));
        FrameworkTable.Open(Space + "List.Clear", (machine, arguments) => Clear(machine, arguments[0]));
        FrameworkTable.Open(Space + "HashSet.Clear", (machine, arguments) => Clear(machine, arguments[0]));
        FrameworkTable.Open(Space + "List.Reverse", (machine, arguments) => arguments.Length == 1
            ? Move(machine, arguments[0], list => { list.Reverse(); return null; })
            : Lose(machine, arguments[0]));
        FrameworkTable.Open(Space + "List.Remove", (machine, arguments) => Remove(machine, arguments[0], arguments[1]));
        FrameworkTable.Open(Space + "HashSet.Remove", (machine, arguments) => Remove(machine, arguments[0], arguments[1]));
        FrameworkTable.Open(Space + "List.IndexOf", (machine, arguments) => arguments.Length == 2 && Sequences.ListOf(arguments[0], machine) is { } items && items.TrueForAll(KnownEquality.IsKnown) && KnownEquality.IsKnown(arguments[1])
            ? items.FindIndex(item => KnownEquality.Same.Equals(item, arguments[1]))
            : null);
        FrameworkTable.Open(Space + "List.ForEach", (machine, arguments) =>
        {
            foreach (var item in Sequences.ListOf(arguments[0], machine) ?? [])
                (arguments[1] as FunctionValue)?.Invoke(machine, item);
            return null;
        });
        FrameworkTable.Open(Space + "Queue.Enqueue", (machine, arguments) => Add(machine, arguments[0], arguments[1]));
        FrameworkTable.Open(Space + "Stack.Push", (machine, arguments) => Add(machine, arguments[0], arguments[1]));
        FrameworkTable.Open(Space + "Queue.Dequeue", (machine, arguments) => Take(machine, arguments[0], fromEnd: false, remove: true));
        FrameworkTable.Open(Space + "Queue.Peek", (machine, arguments) => Take(machine, arguments[0], fromEnd: false, remove: false));
        FrameworkTable.Open(Space + "Stack.Pop", (machine, arguments) => Take(machine, arguments[0], fromEnd: true, remove: true));
        FrameworkTable.Open(Space + "Stack.Peek", (machine, arguments) => Take(machine, arguments[0], fromEnd: true, remove: false));
        FrameworkTable.Open("System.Array.Empty", (_, _) => new ArrayValue([]));
    }

    private static object New(Machine machine, CollectionKind kind, object?[] arguments)
    {
        // The first "argument" of a constructor call is what it makes; a number is only a capacity.
        if (arguments is not [{ } from, ..] || from is int)
            return new ListValue(kind, []);
        if (Sequences.ListOf(from, machine) is not { } items)
            return new ListValue(kind, []) { IsOpen = true };
        return new ListValue(kind, kind == CollectionKind.Set ? items.Distinct(KnownEquality.Same) : items);
    }

    private static List<object?>? Known(object? collection) => collection is ListValue { IsOpen: false } list ? list.Items : null;

    private static object? CountOf(object? collection) => collection switch
    {
        IStretch stretch => stretch.Length,
        ListValue { IsOpen: false } list => list.Items.Count,
        MapValue { IsOpen: false } map => map.Entries.Count,
        System.Collections.ICollection known => known.Count,
        _ => null,
    };

    private static object? Item(object? collection, object? index) => collection switch
    {
        IStretch => Elements.CellOf(collection, index) is { } cell ? cell.Items[cell.Index] : OpenValue.Any,
        ListValue { IsOpen: false } list when Arithmetic.AsIndex(index, list.Items.Count) is { } at => list.Items[Check(at, list.Items.Count)],
        _ => OpenValue.Any,
    };

    public static object? SetItem(Machine machine, object? collection, object? index, object? value)
    {
        if (collection is IStretch && Elements.CellOf(collection, index) is { } cell)
        {
            machine.Write(cell.Items, cell.Index, value);
            return null;
        }

        return collection is ListValue list && Arithmetic.AsIndex(index, list.Items.Count) is { } at
            ? Change(machine, collection, items => { items[Check(at, items.Count)] = value; return null; })
            : Lose(machine, collection);
    }

    private static int Check(int index, int count) => index >= 0 && index < count
        ? index
        : throw new ThrownByCode("System.ArgumentOutOfRangeException", $"There is no item {index} in a collection of {count}.");

    private static object? Add(Machine machine, object? collection, object? item)
    {
        if (collection is ListValue { Kind: CollectionKind.Set } set)
        {
            if (set.IsOpen || !KnownEquality.IsKnown(item))
                return Lose(machine, collection);
            machine.Budget.Spend(set.Items.Count / ItemsComparedInAStep);
            if (set.Items.Contains(item, KnownEquality.Same))
                return false;
        }

        return Change(machine, collection, items => { Sequences.AddLimited(items, item); return true; });
    }

    private static object? Contains(Machine machine, object? collection, object? item)
    {
        machine.Calls.Observe(item);
        return KnownEquality.IsKnown(item) && Sequences.ListOf(collection, machine) is { } items && items.TrueForAll(KnownEquality.IsKnown)
            ? items.Contains(item, KnownEquality.Same)
            : null;
    }

    private static object? Remove(Machine machine, object? collection, object? item) =>
        Known(collection) is { } known && known.TrueForAll(KnownEquality.IsKnown) && KnownEquality.IsKnown(item)
            ? Change(machine, collection, items =>
            {
                machine.Budget.Spend(items.Count / ItemsComparedInAStep);
                var at = items.FindIndex(candidate => KnownEquality.Same.Equals(candidate, item));
                if (at >= 0)
                    items.RemoveAt(at);
                return at >= 0;
            })
            : Lose(machine, collection);

    private static object? Take(Machine machine, object? collection, bool fromEnd, bool remove)
    {
        if (Known(collection) is not { } items)
            return OpenValue.Any;
        if (items.Count == 0)
            throw new ThrownByCode("System.InvalidOperationException", "The collection is empty.");
        var at = fromEnd ? items.Count - 1 : 0;
        return remove
            ? Move(machine, collection, changed => { var taken = changed[at]; changed.RemoveAt(at); return taken; })
            : items[at];
    }

    private static object? Clear(Machine machine, object? collection) => Change(machine, collection, items => { items.Clear(); return null; });

    /// <summary>A change for which items have to move up or down.</summary>
    private static object? Move(Machine machine, object? collection, Func<List<object?>, object?> change) => Change(machine, collection, items =>
    {
        machine.Budget.Spend(items.Count / ItemsMovedInAStep);
        return change(items);
    });

    private static object? Change(Machine machine, object? collection, Func<List<object?>, object?> change)
    {
        if (collection is not ListValue list)
            return OpenValue.Any;
        machine.Journal.Changing(list);
        return list.IsOpen ? OpenValue.Any : change(list.Items);
    }

    private static object? Lose(Machine machine, object? collection)
    {
        if (collection is ICollectionValue known)
        {
            machine.Journal.Changing(known);
            known.IsOpen = true;
        }

        return OpenValue.Any;
    }
}
