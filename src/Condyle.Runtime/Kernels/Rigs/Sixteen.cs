using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Condyle.Runtime.Kernels.Sixteen;

/// <summary>Sixteen rigs side by side in a register of 512 bits.</summary>
internal static class Rigs
{
    public const int Width = 16;

    /// <summary>Items are taken one by one.</summary>
    public const int Step = 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ReadOnlySpan<TItem> Of<TItem>(Items<TItem> items)
        where TItem : struct => items.Each;

    /// <summary>The register that is so many further than the first.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector512<float> Load(ref float first, int at) => Vector512.LoadUnsafe(ref Unsafe.Add(ref first, at * Width));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store(Vector512<float> value, ref float first, int at) => value.StoreUnsafe(ref Unsafe.Add(ref first, at * Width));

    /// <summary>Stores past the cache.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static unsafe void Leave(Vector512<float> value, ref float first, int at) => value.StoreAlignedNonTemporal((float*)Unsafe.AsPointer(ref Unsafe.Add(ref first, at * Width)));

    /// <summary>c − a · b, rounded once: the compiler at run time makes two instructions of it without being told.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector512<float> Less(Vector512<float> c, Vector512<float> a, Vector512<float> b) =>
        Avx512F.IsSupported ? Avx512F.FusedMultiplyAddNegated(a, b, c) : Vector512.FusedMultiplyAdd(-a, b, c);

    /// <summary>Whether a mask holds for every rig.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Every(Vector512<float> mask) => mask.ExtractMostSignificantBits() == 0xFFFF;

    /// <summary>Whether a mask holds for some rig.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Any(Vector512<float> mask) => mask.ExtractMostSignificantBits() != 0;
}
