namespace Condyle.Analyzers.Reading;

/// <summary>Dictionaries.</summary>
internal static class MapCalls
{
    private const string Space = "System.Collections.Generic.";

    public static void Register()
    {
        FrameworkTable.Open(Space + "Dictionary..ctor", (_, arguments) => new MapValue { IsOpen = arguments.Any(argument => argument is not int) });
        foreach (var type in new[] { Space + "Dictionary.", Space + "IDictionary.", Space + "IReadOnlyDictionary." })
        {
            FrameworkTable.Open(type + "Add", (machine, arguments) => Add(machine, arguments[0], arguments[1], arguments[2]));
            FrameworkTable.Open(type + "set_Item", (machine, arguments) => Set(machine, arguments[0], arguments[1], arguments[2]));
            FrameworkTable.Open(type + "get_Item", (machine, arguments) => Get(machine, arguments[0], arguments[1], () =>
                throw new ThrownByCode("System.Collections.Generic.KeyNotFoundException", "The key isn't in the dictionary.")));
            FrameworkTable.Open(type + "ContainsKey", (machine, arguments) => Has(machine, arguments[0], arguments[1]));
            FrameworkTable.Open(type + "get_Count", (_, arguments) => arguments[0] is MapValue { IsOpen: false } map ? map.Entries.Count : null);
            FrameworkTable.Open(type + "get_Keys", (_, arguments) => arguments[0] is MapValue { IsOpen: false } map ? new ArrayValue([.. map.Entries.Keys]) : OpenValue.Any);
            FrameworkTable.Open(type + "get_Values", (_, arguments) => arguments[0] is MapValue { IsOpen: false } map ? new ArrayValue([.. map.Entries.Values]) : OpenValue.Any);
            FrameworkTable.Open(type + "TryGetValue", (machine, arguments) => TryGet(machine, arguments));
        }

        FrameworkTable.Open(Space + "CollectionExtensions.GetValueOrDefault", (machine, arguments) =>
            Get(machine, arguments[0], arguments[1], () => arguments.Length > 2 ? arguments[2] : null));
        FrameworkTable.Open(Space + "KeyValuePair.get_Key", (_, arguments) => (arguments[0] as TupleValue)?.Items[0] ?? OpenValue.Any);
        FrameworkTable.Open(Space + "KeyValuePair.get_Value", (_, arguments) => arguments[0] is TupleValue pair ? pair.Items[1] : OpenValue.Any);
    }

    private static MapValue? Known(object? map, object? key) => map is MapValue { IsOpen: false } known && KnownEquality.IsKnown(key) ? known : null;

    private static object? Add(Machine machine, object? map, object? key, object? value)
    {
        if (Known(map, key) is { } known && known.Entries.ContainsKey(key!))
            throw new ThrownByCode("System.ArgumentException", "The key is in the dictionary already.");
        return Set(machine, map, key, value);
    }

    private static object? Set(Machine machine, object? map, object? key, object? value)
    {
        machine.Calls.Observe(key);
        if (map is not MapValue changed)
            return null;
        machine.Journal.Changing(changed);
        if (Known(map, key) is null)
            changed.IsOpen = true;
        else if (changed.Entries.Count >= Limits.Items)
            throw new ReadingStopped($"a collection has more than {Limits.Items} items");
        else
            changed.Entries[key!] = value;
        return null;
    }

    private static object? Get(Machine machine, object? map, object? key, Func<object?> missing)
    {
        machine.Calls.Observe(key);
        return Known(map, key) is { } known ? known.Entries.TryGetValue(key!, out var value) ? value : missing() : OpenValue.Any;
    }

    private static object? Has(Machine machine, object? map, object? key)
    {
        machine.Calls.Observe(key);
        return Known(map, key) is { } known ? known.Entries.ContainsKey(key!) : null;
    }

    private static object? TryGet(Machine machine, object?[] arguments)
    {
        machine.Calls.Observe(arguments[1]);
        object? found = OpenValue.Any;
        var has = Known(arguments[0], arguments[1]) is { } known ? known.Entries.TryGetValue(arguments[1]!, out found) : (bool?)null;
        if (arguments[2] is Cell cell)
            machine.Write(cell.Items, cell.Index, has is null ? OpenValue.Any : found);
        return has;
    }
}
