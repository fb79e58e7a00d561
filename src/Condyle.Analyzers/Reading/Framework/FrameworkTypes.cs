namespace Condyle.Analyzers.Reading;

/// <summary>A value of a type of the framework: calls through an interface find the members of its own type.</summary>
internal interface IFrameworkValue
{
    /// <summary>The type's full name without type arguments.</summary>
    string TypeName { get; }
}

/// <summary>A collection or sequence.</summary>
internal interface IItemsValue
{
    /// <summary>What its type is made for: the type of its items, or those of its keys and values; none where that isn't known.</summary>
    IReadOnlyList<TypeKey>? TypeArguments { get; set; }
}

/// <summary>Which type of the framework a value is of.</summary>
internal static class FrameworkTypes
{
    /// <summary>Items of Condyle's that are enumerated, counted and taken by their place.</summary>
    public const string Items = "Condyle";

    /// <summary>The type of the items of a collection or sequence; none where it isn't known.</summary>
    public static TypeKey? ItemsOf(object? value) => value switch
    {
        ArrayValue array => array.ItemType,
        IItemsValue { TypeArguments: [var item] } => item,
        _ => null,
    };

    /// <summary>Whether a value that isn't one of the user's own is of a type; none when it can't be told.</summary>
    public static bool? Is(object? value, TypeKey wanted, Machine machine)
    {
        var relations = machine.Program.Relations;
        if (value is not SequenceValue lazy)
            return TypeOf(value) is { } own ? relations.Is(own, wanted) : null;

        // A lazy sequence is nothing else that anyone asks for, but some of the framework's are lists.
        return lazy.TypeArguments is [var item] && relations.Is(Made("System.Collections.Generic.IEnumerable", [item]), wanted) is { } answer
            ? answer || (lazy is not Query { IsList: true } && wanted.PlainName is not ("IEnumerator" or "IDisposable" or "IOrderedEnumerable")) ? answer : null
            : null;
    }

    /// <summary>The type of a value that isn't one of the user's own; none where it isn't known.</summary>
    private static TypeKey? TypeOf(object? value) => value switch
    {
        CollectionValue { TypeArguments: { } arguments } own => Made(own.TypeName, arguments),
        ArrayValue { ItemType: { } element } array => new TypeKey($"{element.FullId}[{array.Lengths.Length}]", TypeShape.Array) { Element = element, Rank = array.Lengths.Length },
        TupleValue tuple => tuple.Items.Select(TypeOf).ToList() is var items && !items.Contains(null) ? Made(tuple.TypeName, [.. items.Select(item => item!)]) : null,
        EnumValue own => own.Type,
        TextValue => new TypeKey("string", TypeShape.String) { Name = "String" },
        BuilderValue => Made("System.Text.StringBuilder", []),
        DateTime or DateTimeOffset or TimeSpan or Guid or Version or System.Numerics.BigInteger => Made(value.GetType().FullName!, []),
        ValueType when value.GetType() is { Namespace: "System.Numerics" } vector => Made(vector.FullName!, []),
        _ when TypeTests.ShapeOf(value) is { } shape => new TypeKey(shape.ToString(), shape) { Name = shape == TypeShape.Bool ? "Boolean" : shape.ToString() },
        _ => null,
    };

    private static TypeKey Made(string type, IReadOnlyList<TypeKey> arguments) =>
        new($"{type}<{string.Join(",", arguments.Select(argument => argument.FullId))}>", TypeShape.Other) { Definition = "T:" + type + (arguments.Count > 0 ? "`" + arguments.Count : ""), Arguments = arguments };

    /// <summary>The full name without type arguments; none where the value is of no type that the table knows.</summary>
    public static string? NameOf(object? value) => value switch
    {
        IFrameworkValue own => own.TypeName,
        TextValue => "System.String",
        ArrayValue => "System.Array",
        SpanValue => "System.Span",
        SequenceValue => "System.Collections.Generic.IEnumerable",
        EnumValue => "System.Enum",
        int => "System.Int32",
        float => "System.Single",
        double => "System.Double",
        bool => "System.Boolean",
        char => "System.Char",
        System.Collections.IEnumerable => Items,
        TimeSpan or DateTimeOffset or Guid or Version or System.Numerics.BigInteger => value.GetType().FullName,
        ValueType number and IConvertible => number.GetType().FullName,
        _ => null,
    };
}
