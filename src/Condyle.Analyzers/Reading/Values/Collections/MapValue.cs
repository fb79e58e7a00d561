namespace Condyle.Analyzers.Reading;

/// <summary>A dictionary.</summary>
internal sealed class MapValue(HashTable table, string typeName = MapValue.Type) : HashedValue(table, typeName), IMap
{
    public const string Type = Generic + "Dictionary";
    public const string OldTable = "System.Collections.Hashtable";
    public const string Concurrent = "System.Collections.Concurrent.ConcurrentDictionary";

    public IEnumerable<object?> Keys => Entries().Select(entry => entry.Key);

    public IEnumerable<object?> Values => Entries().Select(entry => entry.Value);

    public IEnumerable<object?> HeldValues => Table.Entries().Select(entry => entry.Value);

    public override IEnumerable<object?> Items() => Entries().Select(entry => (object?)new TupleValue([entry.Key, entry.Value], isPair: true));

    public bool TryGet(object? key, out object? value)
    {
        var place = Table.Find(key);
        value = place >= 0 ? Table.At(place)!.Value : null;
        return place >= 0;
    }

    public void Set(object? key, object? value)
    {
        var place = Table.Find(key);
        if (place >= 0)
        {
            Table.Set(place, value);
            return;
        }

        Add(key, value);
    }

    public override CollectionValue Copy(string typeName, bool isFixed = false) => new MapValue(Table.Copy(), typeName) { Comparer = Comparer, IsFixed = isFixed };
}

/// <summary>What finds values by their keys.</summary>
internal interface IMap
{
    IEnumerable<object?> Keys { get; }

    IEnumerable<object?> Values { get; }

    /// <summary>The values, in no order in particular.</summary>
    IEnumerable<object?> HeldValues { get; }

    bool TryGet(object? key, out object? value);

    void Set(object? key, object? value);

    bool Remove(object? key);

    void Clear();
}
