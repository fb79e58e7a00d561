namespace Condyle.Analyzers.Reading;

/// <summary>What shows a part of another collection as it is at the time: the keys or the values of a dictionary.</summary>
internal sealed class ViewValue(string typeName, CollectionValue of, Func<IEnumerable<object?>> items, Func<object?, bool>? has = null) : CollectionValue(typeName)
{
    /// <summary>What it shows a part of.</summary>
    public CollectionValue Of => of;

    public override bool IsOpen
    {
        get => of.IsOpen;
        set { }
    }

    public override int Version
    {
        get => of.Version;
        set { }
    }

    public override int Count => IsPart ? items().Count() : of.Count;

    /// <summary>Whether it leaves some items out.</summary>
    public bool IsPart { get; init; }

    /// <summary>What may stand in it.</summary>
    public Func<object?, bool> Bounds { get; init; } = _ => true;

    public override bool IsIndexed => of is SortedMapValue { TypeName: SortedMapValue.SortedList };

    public override object? At(int place)
    {
        Budget.Current.Spend(place / Sequences.ItemsMovedInAStep);
        return Items().ElementAt(place);
    }

    public override IEnumerable<object?> Items() => items();

    public bool? Has(object? item) => has?.Invoke(item);

    // What it shows is put back by what it shows.
    public override CollectionValue Copy(string typeName, bool isFixed = false) => this;

    protected override void Take(CollectionValue other)
    {
    }
}

/// <summary>What shows a whole collection and refuses to change it.</summary>
internal sealed class ReadOnlyValue(string typeName, object inner) : IFrameworkValue
{
    public string TypeName => typeName;

    public object Inner => inner;
}
