using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Condyle.Runtime.Kernels.Eight;

/// <summary>Eight rigs side by side in a register of 256 bits.</summary>
internal static class Rigs
{
    public const int Width = 8;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<float> Load(ref float first) => Vector256.LoadUnsafe(ref first);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store(Vector256<float> value, ref float first) => value.StoreUnsafe(ref first);

    /// <summary>Whether a mask holds for every rig.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Every(Vector256<float> mask) => mask.ExtractMostSignificantBits() == 0xFF;
}
