namespace Condyle.Analyzers.Reading;

/// <summary>One of the user's own types in one compilation: which fields its objects have.</summary>
internal sealed class UserType(string id, IReadOnlyList<string> fields, IReadOnlyList<TypeKey?> fieldTypes, bool isStruct, bool comparesByParts)
{
    private readonly Dictionary<string, int> indices = fields.Select((field, index) => (field, index)).ToDictionary(pair => pair.field, pair => pair.index);

    public string Id { get; } = id;

    public IReadOnlyList<TypeKey?> FieldTypes { get; } = fieldTypes;

    public bool IsStruct { get; } = isStruct;

    /// <summary>Whether two of them are equal when their parts are: structs, records and anonymous types.</summary>
    public bool ComparesByParts { get; } = comparesByParts;

    public IReadOnlyList<string> Fields { get; } = fields;

    /// <summary>The field's place in an object, or −1.</summary>
    public int IndexOf(string field) => indices.TryGetValue(field, out var index) ? index : -1;

    public ObjectValue New(Machine machine)
    {
        var values = new object?[Fields.Count];
        for (var i = 0; i < values.Length; i++)
            values[i] = Defaults.Of(FieldTypes[i], machine);
        return new ObjectValue(this, values);
    }
}
