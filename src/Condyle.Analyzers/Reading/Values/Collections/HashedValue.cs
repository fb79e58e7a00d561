namespace Condyle.Analyzers.Reading;

/// <summary>A collection that finds what it holds by hash: a set's items, a dictionary's keys.</summary>
internal abstract class HashedValue(HashTable table, string typeName) : CollectionValue(typeName)
{
    public HashTable Table { get; private set; } = table;

    private bool isOpen;

    /// <summary>The comparer that it was made with; none for the default one.</summary>
    public object? Comparer { get; init; }

    /// <summary>What it holds for certain while it isn't known what else it does.</summary>
    public HashTable? Sure { get; private set; }

    public override bool IsOpen
    {
        get => isOpen;
        set
        {
            isOpen = value;
            Sure = null;
        }
    }

    public override int Count => Table.Count;

    public void PutSurely(object? key, object? value)
    {
        Sure ??= new HashTable(Table.Rule);
        if (Sure.Find(key) is >= 0 and var place)
            Sure.Set(place, value);
        else
            Sure.Add(key, value);
    }

    protected IEnumerable<HashTable.Entry> Entries() => HashOrder.Entries(Table, TypeName, Comparer);

    protected void Add(object? key, object? value)
    {
        Table.Add(key, value);
        Version++;
    }

    public bool Remove(object? key)
    {
        var place = Table.Find(key);
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

    protected override void Take(CollectionValue other) => Table = ((HashedValue)other).Table;

    protected override void TakeSure(CollectionValue other) => Sure = ((HashedValue)other).Sure?.Copy();

    protected override bool HoldsAsSurely(CollectionValue other) => (Sure?.Entries() ?? []).SelectMany(entry => new[] { entry.Key, entry.Value })
        .SequenceEqual((((HashedValue)other).Sure?.Entries() ?? []).SelectMany(entry => new[] { entry.Key, entry.Value }), KnownEquality.Same);
}
