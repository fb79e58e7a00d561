namespace Condyle.Analyzers.Reading;

/// <summary>A sequence of unknown length, each item of which is made the same way: a query of something that isn't known.</summary>
internal sealed class OpenSequence(Func<object?> item) : IItemsValue
{
    public IReadOnlyList<TypeKey>? TypeArguments { get; set; }

    /// <summary>Makes an item as any of them is made.</summary>
    public object? Item() => item();
}
