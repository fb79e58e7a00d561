using System.Collections;

namespace Condyle.Analyzers.Reading;

/// <summary>Enumerates whatever C# can enumerate.</summary>
internal static class Sequences
{
    /// <summary>The items of a value, each counted as it is handed out; none when they aren't known.</summary>
    public static IEnumerable<object?>? Of(object? value, Machine machine) => ItemsOf(value, machine) is { } items ? Counted(items, machine.Budget) : null;

    /// <summary>All items of a value; none when they aren't known.</summary>
    public static List<object?>? ListOf(object? value, Machine machine)
    {
        try
        {
            return Of(value, machine) is { } items ? ToLimitedList(items) : null;
        }
        catch (SequenceIsOpen open)
        {
            machine.Lose(machine.Here, open.Message);
            return null;
        }
    }

    public static void AddLimited(List<object?> items, object? item)
    {
        CheckRoomIn(items);
        items.Add(item);
    }

    public static void InsertLimited(List<object?> items, int at, object? item)
    {
        CheckRoomIn(items);
        items.Insert(at, item);
    }

    public static List<object?> ToLimitedList(IEnumerable<object?> items)
    {
        var list = new List<object?>();
        foreach (var item in items)
            AddLimited(list, item);
        return list;
    }

    private static void CheckRoomIn(List<object?> items)
    {
        Budget.Current.Make(1);
        if (items.Count >= Limits.Items)
            throw new ReadingStopped($"a collection has more than {Limits.Items} items");
    }

    private static IEnumerable<object?> Counted(IEnumerable<object?> items, Budget budget)
    {
        var count = 0;
        foreach (var item in items)
        {
            budget.Spend();
            if (++count > Limits.Items)
                throw new ReadingStopped($"a sequence has more than {Limits.Items} items");
            yield return item;
        }
    }

    private static IEnumerable<object?>? ItemsOf(object? value, Machine machine)
    {
        Fields.ThrowIfNull(value);
        return value switch
        {
            SequenceValue lazy => lazy,
            ArrayValue array => OfArray(array),
            ListValue { IsOpen: false } list => OfList(list),
            MapValue { IsOpen: false } map => map.Entries.Select(entry => (object?)new TupleValue([entry.Key, entry.Value], isPair: true)).ToList(),
            TextValue text => text.TryKnown(out var known) ? known.Select(character => (object?)character) : null,
            IHandle handle and IEnumerable items => machine.Draft.IsOpen(handle.Id) ? null : items.Cast<object?>(),
            IEnumerable items => items.Cast<object?>(),
            ObjectValue own => machine.Program.EnumeratorOf(own.Type) is { } body && machine.Call(body, own, []) is not ObjectValue and var enumerator ? ItemsOf(enumerator, machine) : null,
            _ => null,
        };
    }

    private static IEnumerable<object?> OfArray(ArrayValue array)
    {
        for (var i = 0; i < array.Items.Length; i++)
            yield return array.Items[i];
    }

    private static IEnumerable<object?> OfList(ListValue list)
    {
        var count = list.Items.Count;
        for (var i = 0; i < list.Items.Count; i++)
        {
            if (list.Items.Count != count)
                throw new ThrownByCode("System.InvalidOperationException", "A collection was changed while it was enumerated.");
            yield return list.Items[list.Kind == CollectionKind.Stack ? count - 1 - i : i];
        }
    }
}
