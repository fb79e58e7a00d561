namespace Condyle.Analyzers.Reading;

/// <summary>A stretch of items that lie somewhere: whoever writes into it writes there.</summary>
internal interface IStretch
{
    object?[] Items { get; }

    int Start { get; }

    int Length { get; }
}

internal static class Stretches
{
    /// <summary>The items of a stretch as they are now.</summary>
    public static IReadOnlyList<object?> Now(this IStretch stretch) =>
        stretch.Start == 0 && stretch.Length == stretch.Items.Length ? stretch.Items : [.. stretch.Items.Skip(stretch.Start).Take(stretch.Length)];
}

/// <summary>A <c>Span</c> or <c>ReadOnlySpan</c> over items. One over the characters of a string is the string.</summary>
internal sealed class SpanValue(object?[] items, int start, int length) : IStretch
{
    public object?[] Items { get; } = items;

    public int Start { get; } = start;

    public int Length { get; } = length;

    public static SpanValue Over(IStretch items) => new(items.Items, items.Start, items.Length);
}
