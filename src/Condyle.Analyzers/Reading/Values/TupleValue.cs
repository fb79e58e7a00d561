namespace Condyle.Analyzers.Reading;

/// <summary>A tuple.</summary>
internal sealed class TupleValue(object?[] items)
{
    public object?[] Items { get; } = items;
}
