namespace Condyle.Analyzers.Reading;

/// <summary>A sorted set: its items in order, each once.</summary>
internal sealed class SortedSetValue(IComparer<object?> order, string typeName = SortedSetValue.Type) : CollectionValue(typeName)
{
    public const string Type = Generic + "SortedSet";

    public List<object?> List { get; private set; } = [];

    public IComparer<object?> Order => order;

    /// <summary>The comparer that it was made with; none for the default one.</summary>
    public object? Comparer { get; init; }

    public override int Count => List.Count;

    // An immutable sorted set has places.
    public override bool IsIndexed => IsFixed;

    public override object? At(int place) => List[place];

    public override IEnumerable<object?> Items()
    {
        for (var i = 0; i < List.Count; i++)
            yield return List[i];
    }

    /// <summary>The item's place, or the complement of where it would stand.</summary>
    public int Find(object? item) => Sorting.Find(List, item, order);

    public bool Has(object? item) => Find(item) >= 0;

    public bool Add(object? item)
    {
        var place = Find(item);
        if (place >= 0)
            return false;
        Sequences.InsertLimited(List, ~place, item);
        Version++;
        return true;
    }

    public bool Remove(object? item)
    {
        var place = Find(item);
        if (place < 0)
            return false;
        List.RemoveAt(place);
        Version++;
        return true;
    }

    public void Clear()
    {
        List = [];
        Version++;
    }

    public override CollectionValue Copy(string typeName, bool isFixed = false) => new SortedSetValue(order, typeName) { List = [.. List], Comparer = Comparer, IsFixed = isFixed };

    protected override void Take(CollectionValue other) => List = ((SortedSetValue)other).List;
}

/// <summary>A sorted dictionary or list: its entries in the order of their keys.</summary>
internal sealed class SortedMapValue(IComparer<object?> order, string typeName) : CollectionValue(typeName), IMap
{
    public const string Dictionary = Generic + "SortedDictionary";
    public const string SortedList = Generic + "SortedList";

    private List<object?> keys = [];
    private List<object?> values = [];

    public IComparer<object?> Order => order;

    /// <summary>The comparer that it was made with; none for the default one.</summary>
    public object? Comparer { get; init; }

    public override int Count => keys.Count;

    public IEnumerable<object?> Keys => keys;

    public IEnumerable<object?> Values => values;

    public IEnumerable<object?> HeldValues => Values;

    public object? KeyAt(int place) => keys[place];

    public object? ValueAt(int place) => values[place];

    public override IEnumerable<object?> Items()
    {
        for (var i = 0; i < keys.Count; i++)
            yield return new TupleValue([keys[i], values[i]], isPair: true);
    }

    /// <summary>The key's place, or the complement of where it would stand.</summary>
    public int Find(object? key) => Sorting.Find(keys, key, order);

    public bool TryGet(object? key, out object? value)
    {
        var place = Find(key);
        value = place >= 0 ? values[place] : null;
        return place >= 0;
    }

    public void Set(object? key, object? value)
    {
        var place = Find(key);
        if (place >= 0)
        {
            values[place] = value;
        }
        else
        {
            Sequences.InsertLimited(keys, ~place, key);
            values.Insert(~place, value);
        }

        Version++;
    }

    public void SetAt(int place, object? value)
    {
        values[place] = value;
        Version++;
    }

    public bool Remove(object? key)
    {
        var place = Find(key);
        if (place >= 0)
            RemoveAt(place);
        return place >= 0;
    }

    public void RemoveAt(int place)
    {
        keys.RemoveAt(place);
        values.RemoveAt(place);
        Version++;
    }

    public void Clear()
    {
        keys = [];
        values = [];
        Version++;
    }

    public override CollectionValue Copy(string typeName, bool isFixed = false) =>
        new SortedMapValue(order, typeName) { keys = [.. keys], values = [.. values], Comparer = Comparer, IsFixed = isFixed };

    protected override void Take(CollectionValue other) => (keys, values) = (((SortedMapValue)other).keys, ((SortedMapValue)other).values);
}
