namespace Condyle.Analyzers.Reading;

/// <summary>What the journal must be able to put back as a whole.</summary>
internal interface ICollectionValue
{
    /// <summary>Whether what it holds isn't known any more.</summary>
    bool IsOpen { get; set; }

    object Snapshot();

    void Restore(object snapshot);

    bool Holds(object snapshot);
}

/// <summary>A list, a queue, a stack or a set: items in order.</summary>
internal sealed class ListValue(CollectionKind kind, IEnumerable<object?> items) : ICollectionValue
{
    public CollectionKind Kind { get; } = kind;

    public List<object?> Items { get; private set; } = [.. items];

    public bool IsOpen { get; set; }

    public object Snapshot()
    {
        Budget.Current.Make(Items.Count);
        return (Items.ToArray(), IsOpen);
    }

    public void Restore(object snapshot)
    {
        var (items, isOpen) = ((object?[], bool))snapshot;
        Items = [.. items];
        IsOpen = isOpen;
    }

    public bool Holds(object snapshot)
    {
        var (items, isOpen) = ((object?[], bool))snapshot;
        Budget.Current.Spend(items.Length);
        return isOpen == IsOpen && items.SequenceEqual(Items, KnownEquality.Same);
    }
}

internal enum CollectionKind
{
    List,
    Set,
    Queue,
    Stack,
}

/// <summary>A dictionary; it keeps the order in which keys were added, as the framework does while nothing is removed.</summary>
internal sealed class MapValue : ICollectionValue
{
    public Dictionary<object, object?> Entries { get; private set; } = new(KnownEquality.Instance);

    public bool IsOpen { get; set; }

    public object Snapshot()
    {
        Budget.Current.Make(Entries.Count);
        return (new Dictionary<object, object?>(Entries, KnownEquality.Instance), IsOpen);
    }

    public void Restore(object snapshot)
    {
        var (entries, isOpen) = ((Dictionary<object, object?>, bool))snapshot;
        Entries = new Dictionary<object, object?>(entries, KnownEquality.Instance);
        IsOpen = isOpen;
    }

    public bool Holds(object snapshot)
    {
        var (entries, isOpen) = ((Dictionary<object, object?>, bool))snapshot;
        Budget.Current.Spend(entries.Count);
        return isOpen == IsOpen && entries.Count == Entries.Count
            && entries.All(entry => Entries.TryGetValue(entry.Key, out var value) && KnownEquality.Same.Equals(value, entry.Value));
    }
}

/// <summary>A <c>StringBuilder</c>.</summary>
internal sealed class BuilderValue : ICollectionValue
{
    public TextValue Text { get; set; } = TextValue.Plain("");

    public bool IsOpen
    {
        get => false;
        set => Text = value ? TextValue.Open : Text;
    }

    public object Snapshot() => Text;

    public void Restore(object snapshot) => Text = (TextValue)snapshot;

    public bool Holds(object snapshot) => ((TextValue)snapshot).Text.Equals(Text.Text);
}
