namespace Condyle.Analyzers.Reading;

/// <summary>A hash set.</summary>
internal sealed class SetValue(HashTable table, string typeName = SetValue.Type) : HashedValue(table, typeName)
{
    public const string Type = Generic + "HashSet";

    public SetValue(IEnumerable<object?> items, IEqualityComparer<object?> rule, string typeName = Type)
        : this(new HashTable(rule), typeName)
    {
        foreach (var item in items)
            Add(item);
    }

    public override IEnumerable<object?> Items() => Entries().Select(entry => entry.Key);

    public bool Has(object? item) => Table.Find(item) >= 0;

    public bool Add(object? item)
    {
        if (Has(item))
            return false;
        Add(item, null);
        return true;
    }

    public override CollectionValue Copy(string typeName, bool isFixed = false) => new SetValue(Table.Copy(), typeName) { Comparer = Comparer, IsFixed = isFixed };
}
