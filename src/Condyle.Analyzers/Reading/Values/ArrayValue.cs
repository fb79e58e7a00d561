namespace Condyle.Analyzers.Reading;

/// <summary>An array of one dimension; its length never changes.</summary>
internal sealed class ArrayValue(object?[] items)
{
    public object?[] Items { get; } = items;
}
