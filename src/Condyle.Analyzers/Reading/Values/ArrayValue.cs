namespace Condyle.Analyzers.Reading;

/// <summary>An array; its lengths never change. The items of one of several dimensions lie row by row.</summary>
internal sealed class ArrayValue(object?[] items, int[]? lengths = null, TypeKey? itemType = null) : IStretch
{
    public object?[] Items { get; } = items;

    /// <summary>The type of its items; none where it isn't known.</summary>
    public TypeKey? ItemType { get; } = itemType;

    /// <summary>What the compiler puts the items in that a collection expression gathers for a read-only interface: to the program that is no array.</summary>
    public Wrapping Wrapping { get; init; }

    /// <summary>How long each dimension is.</summary>
    public int[] Lengths { get; } = lengths ?? [items.Length];

    int IStretch.Start => 0;

    int IStretch.Length => Items.Length;

    /// <summary>Where the item at some indices lies; −1 when there is none.</summary>
    public int PositionOf(IReadOnlyList<int> indices)
    {
        var position = 0;
        for (var i = 0; i < Lengths.Length; i++)
        {
            if (indices[i] < 0 || indices[i] >= Lengths[i])
                return -1;
            position = (position * Lengths[i]) + indices[i];
        }

        return position;
    }
}

/// <summary>What wraps an array where the program sees it as a read-only interface only.</summary>
internal enum Wrapping
{
    None,
    AroundArray,
    AroundList,
}
