using System.Collections;

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

/// <summary>A collection of the framework's: what it holds, in the order in which it is enumerated.</summary>
internal abstract class CollectionValue(string typeName) : ICollectionValue, IFrameworkValue, IItemsValue, IEnumerable<object?>
{
    public const string Generic = "System.Collections.Generic.";

    public string TypeName { get; } = typeName;

    public IReadOnlyList<TypeKey>? TypeArguments { get; set; }

    public virtual bool IsOpen { get; set; }

    /// <summary>Whether nothing can change it: an immutable collection.</summary>
    public bool IsFixed { get; init; }

    /// <summary>Counts the changes after which an enumeration that has begun can't go on.</summary>
    public virtual int Version { get; set; }

    public abstract int Count { get; }

    /// <summary>Whether its items are taken by their place.</summary>
    public virtual bool IsIndexed => false;

    public virtual object? At(int place) => throw new NotSupportedException();

    /// <summary>The items, each from what it holds when it is asked for.</summary>
    public abstract IEnumerable<object?> Items();

    /// <summary>A collection of a kind of the same sort that holds the same.</summary>
    public abstract CollectionValue Copy(string typeName, bool isFixed = false);

    /// <summary>Becomes what another one holds.</summary>
    protected abstract void Take(CollectionValue other);

    /// <summary>Takes over what another one holds for certain while it isn't known what else it does.</summary>
    protected virtual void TakeSure(CollectionValue other)
    {
    }

    protected virtual bool HoldsAsSurely(CollectionValue other) => true;

    /// <summary>What it holds now.</summary>
    public IReadOnlyList<object?> Now()
    {
        Budget.Current.Make(Count);
        return [.. Items()];
    }

    /// <summary>An enumeration, which fails when the collection changes.</summary>
    public IEnumerator<object?> GetEnumerator() => Enumerate(Version);

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    public object Snapshot()
    {
        Budget.Current.Make(Count);
        var copy = Copy(TypeName);
        copy.IsOpen = IsOpen;
        copy.TakeSure(this);
        copy.Version = Version;
        copy.TypeArguments = TypeArguments;
        return copy;
    }

    public void Restore(object snapshot)
    {
        var before = (CollectionValue)snapshot;
        Take(before.Copy(TypeName));
        IsOpen = before.IsOpen;
        TakeSure(before);
        Version = before.Version;
    }

    public bool Holds(object snapshot)
    {
        var before = (CollectionValue)snapshot;
        Budget.Current.Spend(Count);
        return before.IsOpen == IsOpen && HoldsAsSurely(before) && Reach.PartsOf(this).SequenceEqual(Reach.PartsOf(before), KnownEquality.Same);
    }

    private IEnumerator<object?> Enumerate(int version)
    {
        using var items = Items().GetEnumerator();
        while (true)
        {
            if (IsOpen)
                throw new SequenceIsOpen("a collection may have been changed while it is enumerated");
            if (Version != version)
                throw new ThrownByCode("System.InvalidOperationException", "A collection was changed while it was enumerated.");
            if (!items.MoveNext())
                yield break;
            yield return items.Current;
        }
    }
}
