namespace Condyle.Analyzers.Reading;

/// <summary>A hash set.</summary>
internal sealed class SetValue(HashTable table, string typeName = SetValue.Type) : CollectionValue(typeName)
{
    public const string Type = Generic + "HashSet";

    public SetValue(IEnumerable<object?> items, IEqualityComparer<object?> rule, string typeName = Type)
        : this(new HashTable(rule), typeName)
    {
        foreach (var item in items)
            Add(item);
    }

    public HashTable Table { get; private set; } = table;

    /// <summary>The comparer that it was made with; none for the default one.</summary>
    public object? Comparer { get; init; }

    public override int Count => Table.Count;

    public override IEnumerable<object?> Items() => Entries().Select(entry => entry.Key);

    private IEnumerable<HashTable.Entry> Entries() => HashOrder.Entries(Table, TypeName, Comparer);

    public bool Has(object? item) => Table.Find(item) >= 0;

    public bool Add(object? item)
    {
        if (Has(item))
            return false;
        Table.Add(item, null);
        Version++;
        return true;
    }

    public bool Remove(object? item)
    {
        var place = Table.Find(item);
        if (place >= 0)
            Table.RemoveAt(place);
        return place >= 0;
    }

    public void Clear() => Table = new HashTable(Table.Rule);

    /// <summary>Gives up the places that were left.</summary>
    public object? Compact()
    {
        Table = Table.Copy(keepsLeft: false);
        Version++;
        return null;
    }

    public override CollectionValue Copy(string typeName, bool isFixed = false) => new SetValue(Table.Copy(), typeName) { Comparer = Comparer, IsFixed = isFixed };

    protected override void Take(CollectionValue other) => Table = ((SetValue)other).Table;
}
