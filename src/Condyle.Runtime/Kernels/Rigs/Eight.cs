using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Condyle.Runtime.Kernels.Eight;

/// <summary>Eight rigs side by side in a register of 256 bits.</summary>
internal static class Rigs
{
    public const int Width = 8;

    /// <summary>Items are taken one by one.</summary>
    public const int Step = 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ReadOnlySpan<TItem> Of<TItem>(Items<TItem> items)
        where TItem : struct => items.Each;

    /// <summary>The register that is so many further than the first.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<float> Load(ref float first, int at) => Vector256.LoadUnsafe(ref Unsafe.Add(ref first, at * Width));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store(Vector256<float> value, ref float first, int at) => value.StoreUnsafe(ref Unsafe.Add(ref first, at * Width));

    /// <summary>Stores past the cache.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static unsafe void Leave(Vector256<float> value, ref float first, int at) => value.StoreAlignedNonTemporal((float*)Unsafe.AsPointer(ref Unsafe.Add(ref first, at * Width)));

    /// <summary>c − a · b, rounded once: the compiler at run time makes two instructions of it without being told.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<float> Less(Vector256<float> c, Vector256<float> a, Vector256<float> b) =>
        Fma.IsSupported ? Fma.MultiplyAddNegated(a, b, c) : Vector256.FusedMultiplyAdd(-a, b, c);

    /// <summary>Whether a mask holds for every rig.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Every(Vector256<float> mask) => mask.ExtractMostSignificantBits() == 0xFF;

    /// <summary>Whether a mask holds for some rig.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Any(Vector256<float> mask) => mask.ExtractMostSignificantBits() != 0;
}
