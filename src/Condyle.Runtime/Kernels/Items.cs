namespace Condyle.Runtime.Kernels;

/// <summary>The items of a batch. Where kernels take eight at once, the last one is there again and again, which does no harm: it comes out the same each time.</summary>
internal sealed class Items<TItem>(TItem[] items)
    where TItem : struct
{
    /// <summary>How many a kernel takes at once.</summary>
    public const int Abreast = 8;

    /// <summary>Fewer than this are sooner done one by one.</summary>
    private const int Few = 3;

    private readonly TItem[] padded = [.. items, .. Enumerable.Repeat(items[^1], (Abreast - (items.Length % Abreast)) % Abreast)];

    public ReadOnlySpan<TItem> Each => padded.AsSpan(0, items.Length);

    public ReadOnlySpan<TItem> Padded => padded;

    /// <summary>Whether it pays, on this machine, to take eight items of one rig at once.</summary>
    public bool GoAbreast => System.Runtime.Intrinsics.X86.Avx.IsSupported && items.Length >= Few;
}
