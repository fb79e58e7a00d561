namespace Condyle.Analyzers.Reading;

internal enum TypeShape
{
    Other,
    Void,
    Bool,
    Char,
    SByte,
    Byte,
    Int16,
    UInt16,
    Int32,
    UInt32,
    Int64,
    UInt64,
    Single,
    Double,
    Decimal,
    String,
    Enum,
    Nullable,
    Tuple,
    Array,

    /// <summary>A type of Condyle.</summary>
    Condyle,

    /// <summary>A vector or quaternion of <c>System.Numerics</c>.</summary>
    Numerics,

    /// <summary>A type declared in the source that is read.</summary>
    User,

    /// <summary>A type parameter.</summary>
    Parameter,
}

/// <summary>A type without its symbol, so that lowered code can outlive the compilation that it came from.</summary>
internal sealed class TypeKey(string id, TypeShape shape)
{
    /// <summary>The full name, with type arguments; a type parameter's name.</summary>
    public string Id { get; } = id;

    public TypeShape Shape { get; } = shape;

    /// <summary>An enum's or nullable's underlying type, an array's element type.</summary>
    public TypeKey? Element { get; init; }

    /// <summary>An enum's members by name, with their values as the underlying type boxes them.</summary>
    public IReadOnlyList<KeyValuePair<string, object>> Members { get; init; } = [];

    /// <summary>A tuple's element types, a generic type's arguments.</summary>
    public IReadOnlyList<TypeKey> Arguments { get; init; } = [];

    public bool IsReference { get; init; }

    /// <summary>The type of Condyle or of <c>System.Numerics</c> itself.</summary>
    public Type? Host { get; init; }

    /// <summary>A structure of the user's, which C# copies on assignment.</summary>
    public bool IsUserStruct => Shape == TypeShape.User && !IsReference;

    public bool IsForkable => Shape is TypeShape.Bool || (Shape is TypeShape.Enum && Members.Count is > 0 and <= 8) || Host == typeof(Side);

    /// <summary>The values that an unknown of this type can have.</summary>
    public IReadOnlyList<object> Choices => Shape switch
    {
        TypeShape.Bool => [true, false],
        TypeShape.Enum => [.. Members.Select(member => member.Value).Distinct()],
        _ => [.. Side.Both],
    };

    public override string ToString() => Id;
}
