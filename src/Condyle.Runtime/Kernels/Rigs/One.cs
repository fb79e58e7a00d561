using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Condyle.Runtime.Kernels.One;

/// <summary>One rig. Only the first number of a register counts; that saves moving between kinds of registers.</summary>
internal static class Rigs
{
    public const int Width = 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector128<float> Load(ref float first, int at) => Vector128.CreateScalar(Unsafe.Add(ref first, at));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store(Vector128<float> value, ref float first, int at) => Unsafe.Add(ref first, at) = value.ToScalar();

    /// <summary>Whether a mask holds for every rig.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Every(Vector128<float> mask) => (mask.ExtractMostSignificantBits() & 1) != 0;
}
