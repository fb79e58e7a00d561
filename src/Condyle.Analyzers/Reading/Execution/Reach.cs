namespace Condyle.Analyzers.Reading;

/// <summary>What can be got at from some values: through fields, items, captured variables.</summary>
internal static class Reach
{
    /// <summary>Each object, collection, stretch of items, place, function, task and handle once; the captured variables as arrays of one.</summary>
    public static IReadOnlyCollection<object> From(IEnumerable<object?> roots, Budget budget)
    {
        var seen = new HashSet<object>();
        var pending = new Stack<object?>(roots);
        while (pending.Count > 0)
        {
            budget.Spend();
            if (pending.Pop() is not { } value || value is ValueType and not (IHandle or Cell) || !seen.Add(value))
                continue;
            foreach (var part in PartsOf(value))
                pending.Push(part);
        }

        return seen;
    }

    /// <summary>What can be got at from a value in one step.</summary>
    public static IEnumerable<object?> PartsOf(object value) => value switch
    {
        Frame frame => [frame.This, .. frame.Slots, .. frame.CopyStack()],
        ObjectValue own => own.Fields,
        TupleValue tuple => tuple.Items,
        Cell cell => [cell.Items[cell.Index]],
        object?[] variable => variable,
        FunctionValue function => [.. function.Reaches, .. function.Parts],
        TaskValue { HasThrown: false } task => [task.Result],
        TaskValue task => task.Exceptions,
        ExceptionValue thrown => thrown.All ?? [thrown.Inner],
        ViewValue view => [view.Of],
        HashedValue hashed => hashed.Table.Entries().SelectMany(entry => new[] { entry.Key, entry.Value }),
        CollectionValue collection => collection.Items(),
        ReadOnlyValue shown => [shown.Inner],
        IStretch items => items.Items,
        StartEnumeration.Enumeration running => [running.Of],
        _ => [],
    };
}
