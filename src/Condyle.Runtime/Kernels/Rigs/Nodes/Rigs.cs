using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Condyle.Runtime.Kernels.EightNodes;

/// <summary>Eight nodes of one rig side by side in a register of 256 bits: the items of a batch, eight by eight.</summary>
internal static class Rigs
{
    public const int Step = 8;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ReadOnlySpan<TItem> Of<TItem>(Items<TItem> items)
        where TItem : struct => items.Padded;

    /// <summary>c − a · b, rounded once.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<float> Less(Vector256<float> c, Vector256<float> a, Vector256<float> b) =>
        Fma.IsSupported ? Fma.MultiplyAddNegated(a, b, c) : Vector256.FusedMultiplyAdd(-a, b, c);

    /// <summary>Whether a mask holds for every node.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Every(Vector256<float> mask) => mask.ExtractMostSignificantBits() == 0xFF;
}
