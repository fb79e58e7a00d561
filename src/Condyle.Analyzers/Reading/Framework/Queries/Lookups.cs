namespace Condyle.Analyzers.Reading;

/// <summary>The items of one key.</summary>
internal sealed class GroupingValue(object? key, List<object?> items) : CollectionValue("System.Linq.IGrouping")
{
    public object? Key => key;

    public List<object?> List => items;

    public override int Count => items.Count;

    public override bool IsIndexed => true;

    public override object? At(int place) => items[place];

    public override IEnumerable<object?> Items() => items;

    public override CollectionValue Copy(string typeName, bool isFixed = false) => this;

    protected override void Take(CollectionValue other)
    {
    }
}

/// <summary>A lookup: groups in the order in which their keys first came.</summary>
internal sealed class LookupValue(IEqualityComparer<object?> rule) : CollectionValue("System.Linq.ILookup")
{
    private readonly HashTable groups = new(rule);

    public override int Count => groups.Count;

    public override IEnumerable<object?> Items() => groups.Entries().Select(entry => entry.Value);

    public GroupingValue? Find(object? key) => groups.Find(key) is >= 0 and var place ? (GroupingValue?)groups.At(place)!.Value : null;

    /// <summary>The group of a key, which is made where there is none yet.</summary>
    public GroupingValue GroupOf(object? key)
    {
        if (Find(Keys.Known(key)) is { } known)
            return known;
        var made = new GroupingValue(key, []);
        groups.Add(key, made);
        return made;
    }

    /// <summary>The lookup of a sequence: for each item first its key is made, then its element.</summary>
    /// <param name="source">What is looked up.</param>
    /// <param name="rule">When two keys are the same.</param>
    /// <param name="machine">The machine that runs the functions.</param>
    /// <param name="key">Makes the key of an item.</param>
    /// <param name="element">Makes the element of an item; none where it is the item itself.</param>
    /// <param name="dropsNull">Whether items without a key are left out, as they are where sequences are joined.</param>
    public static LookupValue Of(IEnumerable<object?> source, IEqualityComparer<object?> rule, Machine machine, FunctionValue key, FunctionValue? element = null, bool dropsNull = false)
    {
        var lookup = new LookupValue(rule);
        foreach (var item in source)
        {
            var made = key.Invoke(machine, item);
            if (made is null && dropsNull)
                continue;
            var group = lookup.GroupOf(made);
            Sequences.AddLimited(group.List, element is null ? item : element.Invoke(machine, item));
        }

        return lookup;
    }

    public override CollectionValue Copy(string typeName, bool isFixed = false) => this;

    protected override void Take(CollectionValue other)
    {
    }
}

/// <summary>A grouped sequence, or what is made of each group.</summary>
internal sealed class GroupQuery(Machine machine, Source source, Func<LookupValue> group, FunctionValue? result) : Query(machine, source.Depth + 1)
{
    // Counting makes the groups and nothing of them.
    public override int? Count(bool onlyIfCheap) => onlyIfCheap ? null : group().Count;

    protected override IEnumerable<object?> Items()
    {
        foreach (GroupingValue made in group().Items().Cast<GroupingValue>())
            yield return result is null ? made : result.Invoke(Machine, made.Key, made);
    }
}
