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

    /// <summary>A vector, quaternion or matrix of <c>System.Numerics</c>.</summary>
    Numerics,

    /// <summary>A type declared in the source that is read.</summary>
    User,

    /// <summary>A type parameter.</summary>
    Parameter,
}

/// <summary>A type without its symbol, so that lowered code can outlive the compilation that it came from.</summary>
internal sealed class TypeKey(string id, TypeShape shape) : IEquatable<TypeKey>
{
    /// <summary>The full name, with type arguments; a type parameter's name.</summary>
    public string Id { get; } = id;

    public TypeShape Shape { get; } = shape;

    /// <summary>The full name with type arguments also where <see cref="Id"/> has none.</summary>
    public string FullId => Shape == TypeShape.User && Arguments.Count > 0 ? $"{Id}<{string.Join(",", Arguments.Select(argument => argument.FullId))}>" : Id;

    /// <summary>An enum's or nullable's underlying type, an array's element type.</summary>
    public TypeKey? Element { get; init; }

    /// <summary>An enum's members by name, with their values as the underlying type boxes them.</summary>
    public IReadOnlyList<KeyValuePair<string, object>> Members { get; init; } = [];

    /// <summary>A tuple's element types, a generic type's arguments.</summary>
    public IReadOnlyList<TypeKey> Arguments { get; init; } = [];

    /// <summary>How many dimensions an array has.</summary>
    public int Rank { get; init; } = 1;

    /// <summary>Whether an enum's members can be put together.</summary>
    public bool IsFlags { get; init; }

    public bool IsReference { get; init; }

    /// <summary>The type of Condyle or of <c>System.Numerics</c> itself.</summary>
    public Type? Host { get; init; }

    /// <summary>The id of the type's definition, by which a compilation finds it.</summary>
    public string Definition { get; init; } = id;

    /// <summary>The name, without namespace and type arguments.</summary>
    public string Name { get; init; } = id;

    /// <summary>The name without the number of type arguments.</summary>
    public string PlainName => Name.IndexOf('`') is >= 0 and var tick ? Name.Substring(0, tick) : Name;

    /// <summary>Whether a type parameter is part of it, so that what it stands for has to be put in.</summary>
    public bool HasParameters => Shape == TypeShape.Parameter || Element is { HasParameters: true } || Arguments.Any(argument => argument.HasParameters);

    /// <summary>A structure of the user's, which C# copies on assignment.</summary>
    public bool IsUserStruct => Shape == TypeShape.User && !IsReference;

    public bool IsForkable => Shape is TypeShape.Bool || (Shape is TypeShape.Enum && !IsFlags && Members.Count is > 0 and <= 8) || Host == typeof(Side);

    /// <summary>The values that an unknown of this type can have.</summary>
    public IReadOnlyList<object> Choices => Shape switch
    {
        TypeShape.Bool => [true, false],
        TypeShape.Enum => [.. Members.Select(member => new EnumValue(this, member.Value)).Distinct()],
        _ => [.. Side.Both],
    };

    /// <summary>The same type with what its type parameters stand for put in.</summary>
    public TypeKey With(IReadOnlyDictionary<string, TypeKey> known)
    {
        if (Shape == TypeShape.Parameter)
            return known.TryGetValue(Id, out var argument) ? argument : this;
        if (!HasParameters)
            return this;
        return new TypeKey(Id, Shape)
        {
            Element = Element?.With(known),
            Members = Members,
            Arguments = [.. Arguments.Select(argument => argument.With(known))],
            IsReference = IsReference,
            Host = Host,
            Name = Name,
            Definition = Definition,
            Rank = Rank,
            IsFlags = IsFlags,
        };
    }

    public bool Equals(TypeKey? other) => other is not null && other.FullId == FullId;

    public override bool Equals(object? other) => Equals(other as TypeKey);

    public override int GetHashCode() => FullId.GetHashCode();

    public override string ToString() => Id;
}
