using System.Collections;

namespace Condyle.Analyzers.Reading;

/// <summary>Enumerates whatever C# can enumerate.</summary>
internal static class Sequences
{
    /// <summary>How many items of a list are moved, or passed over, in the time of an instruction.</summary>
    public const int ItemsMovedInAStep = 512;

    /// <summary>The items of a value, each counted as it is handed out; none when they aren't known.</summary>
    public static IEnumerable<object?>? Of(object? value, Machine machine) => ItemsOf(value, machine) is { } items ? Counted(items, machine.Budget) : null;

    /// <summary>Whether something is known to be enumerated, without beginning to.</summary>
    public static bool CanBeRead(object? value, Machine machine) => value switch
    {
        OpenValue or OpenSequence or CollectionValue { IsOpen: true } or EnumeratorValue { IsOpen: true } => false,
        ReadOnlyValue { Inner: var inner } => CanBeRead(inner, machine),
        TextValue text => !text.Text.IsOpen,
        ObjectValue own => own.Collection is not null || machine.Program.EnumeratorOf(own.Type) is not null || machine.Program.MoverOf(own.Type) is not null,
        IHandle handle => handle is IEnumerable && !Handles.IsOpen(handle),
        _ => value is IStretch or EnumeratorValue or IEnumerable,
    };

    /// <summary>All items of a value; none when they aren't known.</summary>
    public static List<object?>? ListOf(object? value, Machine machine)
    {
        machine.Lost.Add(value is ICollectionValue { IsOpen: true } ? value : null);
        if (value is OpenValue)
            machine.Lost.Enumerate();
        if (value is OpenSequence open)
        {
            machine.AnyNumberOfTimes(() => open.Item());
            return null;
        }

        try
        {
            return Of(value, machine) is { } items ? ToLimitedList(items) : null;
        }
        catch (AnswerIsOpen unknown)
        {
            Lose(value, unknown, machine);
            return null;
        }
    }

    /// <summary>The items of a value turn out not to be known: only where code of the user's makes them may something have been done that isn't known either.</summary>
    public static void Lose(object? value, AnswerIsOpen unknown, Machine machine)
    {
        if (value is ObjectValue or SequenceValue or EnumeratorValue { RunsCode: true } && !(value is IteratorValue && unknown is SequenceIsOpen { HasRun: true }))
            machine.Lose(machine.Here, unknown.Message);
    }

    public static void AddLimited(List<object?> items, object? item)
    {
        CheckRoomIn(items);
        items.Add(item);
    }

    public static void InsertLimited(List<object?> items, int at, object? item)
    {
        CheckRoomIn(items);
        Budget.Current.Spend((items.Count - at) / ItemsMovedInAStep);
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

    /// <summary>The items, each counted as it is handed out.</summary>
    public static IEnumerable<object?> Counted(IEnumerable<object?> items, Budget budget)
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
            IStretch stretch => OfStretch(stretch),
            ObjectValue { Inline: { } items } => OfStretch(items),
            CollectionValue { IsOpen: true } => null,
            CollectionValue own => own,
            ReadOnlyValue { Inner: var inner } => ItemsOf(inner, machine),
            EnumeratorValue { IsOpen: false } enumerator => Rest(enumerator),
            TextValue text => CharactersOf(text, machine),
            IHandle handle and IEnumerable items => Handles.DraftOf(handle).IsOpen(handle.Id) ? null : items.Cast<object?>(),
            IEnumerable items => items.Cast<object?>(),
            ObjectValue own => OfObject(own, machine),
            _ => null,
        };
    }

    private static IEnumerable<object?>? CharactersOf(TextValue text, Machine machine)
    {
        machine.Calls.Observe(text);
        return text.TryKnown(out var known) ? known.Select(character => (object?)character) : null;
    }

    // An object hands out an enumerator: an iterator's items, or an object that moves on and has a current item.
    private static IEnumerable<object?>? OfObject(ObjectValue own, Machine machine)
    {
        if (machine.Program.MoverOf(own.Type) is { } mover)
            return Moved(own, mover, machine);
        if (machine.Program.EnumeratorOf(own.Type) is not { } body)
            return own.Collection is { } collection ? ItemsOf(collection, machine) : null;
        return machine.Call(body, own, []) switch
        {
            ObjectValue enumerator => machine.Program.MoverOf(enumerator.Type) is { } moves ? Moved(enumerator, moves, machine) : null,
            var items => ItemsOf(items, machine),
        };
    }

    private static IEnumerable<object?> Moved(ObjectValue enumerator, (CodeBody MoveNext, CodeBody? Current, string Field, CodeBody? Dispose) mover, Machine machine)
    {
        try
        {
            while (machine.Decide(machine.Call(mover.MoveNext, enumerator, [])) switch { bool moved => moved, _ => throw new SequenceIsOpen("how many items there are isn't known") })
                yield return mover.Current is { } current ? machine.Call(current, enumerator, []) : Fields.CellOf(enumerator, mover.Field) is { } cell ? cell.Items[cell.Index] : OpenValue.Any;
        }
        finally
        {
            if (mover.Dispose is { } dispose && !machine.HasStopped)
                machine.Call(dispose, enumerator, []);
        }
    }

    private static IEnumerable<object?> OfStretch(IStretch stretch)
    {
        for (var i = 0; i < stretch.Length; i++)
            yield return ValueCopies.Of(stretch.Items[stretch.Start + i]);
    }

    /// <summary>The places of a value's items, for a loop that changes them.</summary>
    public static IEnumerable<object?>? CellsOf(object? value) =>
        value is IStretch stretch ? Enumerable.Range(stretch.Start, stretch.Length).Select(at => (object?)new Cell(stretch.Items, at)) : null;

    private static IEnumerable<object?> Rest(EnumeratorValue enumerator)
    {
        while (enumerator.MoveNext())
            yield return enumerator.Current;
    }
}
