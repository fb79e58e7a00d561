namespace Condyle.Analyzers.Reading;

/// <summary>An object of one of the user's own types: a class by reference, a struct or record struct by value.</summary>
internal sealed class ObjectValue(UserType type, object?[] fields, IReadOnlyDictionary<string, TypeKey>? typeArguments)
{
    /// <summary>The field that holds what the collection is from which the type derives.</summary>
    public const string CollectionField = "<collection>";

    /// <summary>What it is as a collection of the framework's, or what isn't known of it any more; none where its type derives from none.</summary>
    public object? Collection => Type.Collection is null ? null : Fields[Type.IndexOf(CollectionField)];

    /// <summary>The items of an inline array; none for other objects.</summary>
    public SpanValue? Inline => Type.IsInlineArray ? new SpanValue(Fields, 0, Fields.Length) : null;

    public UserType Type { get; } = type;

    public object?[] Fields { get; } = fields;

    /// <summary>What the type parameters of its type and its bases stand for; none where there are none.</summary>
    public IReadOnlyDictionary<string, TypeKey>? TypeArguments { get; } = typeArguments;

    public ObjectValue Copy() => new(Type, ValueCopies.PartsOf(Fields), TypeArguments);
}
