namespace Condyle.Analyzers.Reading;

/// <summary>A tuple, or the pair of key and value of a dictionary.</summary>
internal sealed class TupleValue(object?[] items, bool isPair = false)
{
    public object?[] Items { get; } = items;

    /// <summary>Whether it is a <c>KeyValuePair</c>.</summary>
    public bool IsPair { get; } = isPair;
}
