namespace Condyle.Analyzers.Reading;

/// <summary>One of the user's own types in one compilation: which fields its objects have.</summary>
internal sealed class UserType(string id, IReadOnlyList<string> fields, IReadOnlyList<TypeKey?> fieldTypes, bool isStruct, bool comparesByParts)
{
    private readonly Dictionary<string, int> indices = fields.Select((field, index) => (field, index)).ToDictionary(pair => pair.field, pair => pair.index);

    public string Id { get; } = id;

    /// <summary>The name as the code writes it.</summary>
    public string Name { get; init; } = "";

    public IReadOnlyList<TypeKey?> FieldTypes { get; } = fieldTypes;

    public bool IsStruct { get; } = isStruct;

    /// <summary>Whether its fields are items that are asked for by their index.</summary>
    public bool IsInlineArray { get; init; }

    /// <summary>Whether two of them are equal when their parts are: structs, records and anonymous types.</summary>
    public bool ComparesByParts { get; } = comparesByParts;

    public IReadOnlyList<string> Fields { get; } = fields;

    /// <summary>The type's own parameters, in order.</summary>
    public IReadOnlyList<string> Parameters { get; init; } = [];

    /// <summary>The parameters of its bases and interfaces, and what they stand for in terms of its own.</summary>
    public IReadOnlyList<KeyValuePair<string, TypeKey>> BaseArguments { get; init; } = [];

    /// <summary>The collection of the framework that the type derives from, as the code writes it; none for others.</summary>
    public TypeKey? Collection { get; init; }

    /// <summary>The field's place in an object, or −1.</summary>
    public int IndexOf(string field) => indices.TryGetValue(field, out var index) ? index : -1;

    /// <summary>A new object with default fields; the arguments are what the type's parameters stand for.</summary>
    public ObjectValue New(Machine machine, IReadOnlyList<TypeKey>? arguments = null)
    {
        // A struct that holds itself doesn't compile, but may be typed.
        using var level = Budget.Current.Deeper(Fields.Count);
        var known = ArgumentsFor(arguments ?? []);
        var values = new object?[Fields.Count];
        for (var i = 0; i < values.Length; i++)
            values[i] = Defaults.Of(known is null ? FieldTypes[i] : FieldTypes[i]?.With(known), machine);
        if (Collection is { } collection)
            values[IndexOf(ObjectValue.CollectionField)] = FrameworkTable.Call(machine, new MethodRef(".ctor", CollectionValue.Generic + collection.PlainName, ".ctor") { Returns = known is null ? collection : collection.With(known) }, FrameworkTable.Find(CollectionValue.Generic + collection.PlainName, ".ctor"), [], default);
        return new ObjectValue(this, values, known);
    }

    /// <summary>What the parameters of the type and its bases stand for, given the arguments of the type; none where there are none.</summary>
    public IReadOnlyDictionary<string, TypeKey>? ArgumentsFor(IReadOnlyList<TypeKey> arguments)
    {
        if (Parameters.Count == 0 && BaseArguments.Count == 0)
            return null;
        var known = new Dictionary<string, TypeKey>();
        for (var i = 0; i < Parameters.Count && i < arguments.Count; i++)
            known[Parameters[i]] = arguments[i];
        foreach (var pair in BaseArguments)
            known[pair.Key] = pair.Value.With(known);
        return known;
    }
}
