namespace Condyle.Analyzers.Reading;

/// <summary>A list, or what is one in other respects: an immutable list or array, a builder of one.</summary>
internal sealed class ListValue(IEnumerable<object?> items, string typeName = ListValue.Type) : CollectionValue(typeName)
{
    public const string Type = Generic + "List";

    public List<object?> List { get; private set; } = [.. items];

    public override int Count => List.Count;

    public override bool IsIndexed => true;

    public override object? At(int place) => List[place];

    public override IEnumerable<object?> Items()
    {
        for (var i = 0; i < List.Count; i++)
            yield return List[i];
    }

    public override CollectionValue Copy(string typeName, bool isFixed = false) => new ListValue(List, typeName) { IsFixed = isFixed };

    protected override void Take(CollectionValue other) => List = ((ListValue)other).List;
}
