namespace Condyle.Analyzers.Reading;

/// <summary>A value of a type of the framework: calls through an interface find the members of its own type.</summary>
internal interface IFrameworkValue
{
    /// <summary>The type's full name without type arguments.</summary>
    string TypeName { get; }
}

/// <summary>A collection or sequence of items of one type.</summary>
internal interface IItemsValue
{
    /// <summary>The type of the items; none where it isn't known.</summary>
    TypeKey? ItemType { get; set; }
}

/// <summary>Which type of the framework a value is of.</summary>
internal static class FrameworkTypes
{
    /// <summary>Items of Condyle's that are enumerated, counted and taken by their place.</summary>
    public const string Items = "Condyle";

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
        ValueType number and IConvertible => number.GetType().FullName,
        _ => null,
    };
}
