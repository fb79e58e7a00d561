namespace Condyle.Analyzers.Reading;

/// <summary>
/// The entries of a dictionary or hash set, in the order in which the framework hands them out: in places in the order of their adding,
/// where a place that was left is taken again first.
/// </summary>
internal sealed class HashTable(IEqualityComparer<object?> rule)
{
    private readonly Dictionary<int, List<int>> byHash = [];
    private readonly List<Entry?> places = [];
    private readonly Stack<int> left = new();

    public IEqualityComparer<object?> Rule => rule;

    public int Count => places.Count - left.Count;

    /// <summary>How many places were ever taken, those included that were left.</summary>
    public int Places => places.Count;

    /// <summary>The entry in a place; none where it was left.</summary>
    public Entry? At(int place) => place < places.Count ? places[place] : null;

    /// <summary>The place of a key, or −1.</summary>
    public int Find(object? key)
    {
        Budget.Current.Spend();
        if (!byHash.TryGetValue(HashOf(key), out var chain))
            return -1;

        // The framework looks at what was added last first.
        for (var i = chain.Count - 1; i >= 0; i--)
        {
            Budget.Current.Spend();
            if (rule.Equals(places[chain[i]]!.Key, key))
                return chain[i];
        }

        return -1;
    }

    /// <summary>Adds a key that isn't there yet, and tells its place.</summary>
    public int Add(object? key, object? value)
    {
        if (Count >= Limits.Items)
            throw new ReadingStopped($"a collection has more than {Limits.Items} items");
        Budget.Current.Make(1);
        var hash = HashOf(key);
        var place = left.Count > 0 ? left.Pop() : places.Count;
        if (place == places.Count)
            places.Add(null);
        places[place] = new Entry(key, value);
        if (!byHash.TryGetValue(hash, out var chain))
            byHash[hash] = chain = [];
        chain.Add(place);
        return place;
    }

    public void Set(int place, object? value) => places[place] = places[place]! with { Value = value };

    public void RemoveAt(int place)
    {
        byHash[HashOf(places[place]!.Key)].Remove(place);
        places[place] = null;
        left.Push(place);
    }

    /// <summary>The entries from the first place to the last one, as it is when it is reached.</summary>
    public IEnumerable<Entry> Entries()
    {
        for (var i = 0; i < places.Count; i++)
        {
            if (places[i] is { } entry)
                yield return entry;
        }
    }

    /// <summary>A table with the same places, those that were left included, or without them.</summary>
    public HashTable Copy(bool keepsLeft = true)
    {
        var copy = new HashTable(rule);
        foreach (var chain in byHash)
            copy.byHash[chain.Key] = [.. chain.Value];
        copy.places.AddRange(places);
        foreach (var place in left.Reverse())
            copy.left.Push(place);
        return keepsLeft || left.Count == 0 ? copy : Compacted(copy);
    }

    private static HashTable Compacted(HashTable table)
    {
        var compact = new HashTable(table.Rule);
        foreach (var entry in table.Entries())
            compact.Add(entry.Key, entry.Value);
        return compact;
    }

    private int HashOf(object? key) => key is null ? 0 : rule.GetHashCode(key);

    internal sealed record Entry(object? Key, object? Value);
}
