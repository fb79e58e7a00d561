namespace Condyle.Analyzers.Reading;

/// <summary>A tuple, or the pair of key and value of a dictionary.</summary>
internal sealed class TupleValue(object?[] items, bool isPair = false) : IFrameworkValue
{
    public object?[] Items { get; } = items;

    /// <summary>Whether it is a <c>KeyValuePair</c>.</summary>
    public bool IsPair { get; } = isPair;

    /// <summary>Whether it is an object of the class <c>Tuple</c>.</summary>
    public bool IsObject { get; init; }

    public string TypeName => IsPair ? CollectionValue.Generic + "KeyValuePair" : IsObject ? "System.Tuple" : "System.ValueTuple";
}
