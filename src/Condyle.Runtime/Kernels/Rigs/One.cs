using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Condyle.Runtime.Kernels.One;

/// <summary>One rig. Only the first number of a register counts; that saves moving between kinds of registers.</summary>
internal static class Rigs
{
    public const int Width = 1;

    /// <summary>Items are taken one by one.</summary>
    public const int Step = 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static ReadOnlySpan<TItem> Of<TItem>(Items<TItem> items)
        where TItem : struct => items.Each;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector128<float> Load(ref float first, int at) => Vector128.CreateScalar(Unsafe.Add(ref first, at));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store(Vector128<float> value, ref float first, int at) => Unsafe.Add(ref first, at) = value.ToScalar();

    /// <summary>Stores; there is nothing to gain past the cache.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Leave(Vector128<float> value, ref float first, int at) => Store(value, ref first, at);

    /// <summary>c − a · b, rounded once: the compiler at run time makes two instructions of it without being told.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector128<float> Less(Vector128<float> c, Vector128<float> a, Vector128<float> b) =>
        Fma.IsSupported ? Fma.MultiplyAddNegated(a, b, c) : Vector128.FusedMultiplyAdd(-a, b, c);

    /// <summary>Whether a mask holds for every rig.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Every(Vector128<float> mask) => (mask.ExtractMostSignificantBits() & 1) != 0;

    /// <summary>Whether a mask holds for some rig.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Any(Vector128<float> mask) => (mask.ExtractMostSignificantBits() & 1) != 0;
}
