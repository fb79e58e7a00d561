using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Condyle.Runtime.Kernels.EightNodes;

/// <summary>Takes four numbers in a row from each of eight places into four registers, and puts them back: a table of eight rows turned over.</summary>
internal static class Rows
{
    /// <param name="first">The first number of a column, or one beside it in the first slot.</param>
    /// <param name="slot">The slot that the first item names.</param>
    /// <param name="step">How many numbers further the next item names its own.</param>
    /// <param name="stride">How many numbers a slot has.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn Take(ref float first, ref int slot, int step, int stride) => TurnedOver(
        Two(ref first, (nint)slot * stride, (nint)Unsafe.Add(ref slot, 4 * step) * stride),
        Two(ref first, (nint)Unsafe.Add(ref slot, step) * stride, (nint)Unsafe.Add(ref slot, 5 * step) * stride),
        Two(ref first, (nint)Unsafe.Add(ref slot, 2 * step) * stride, (nint)Unsafe.Add(ref slot, 6 * step) * stride),
        Two(ref first, (nint)Unsafe.Add(ref slot, 3 * step) * stride, (nint)Unsafe.Add(ref slot, 7 * step) * stride));

    /// <summary>Rows that are so many numbers apart.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn Take(ref float first, int step) => TurnedOver(
        Two(ref first, 0, 4 * step),
        Two(ref first, step, 5 * step),
        Two(ref first, 2 * step, 6 * step),
        Two(ref first, 3 * step, 7 * step));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Put(in WideTurn value, ref float first, ref int slot, int step, int stride)
    {
        var rows = TurnedOver(value.X, value.Y, value.Z, value.W);
        Four(rows.X.GetLower(), ref first, (nint)slot * stride);
        Four(rows.Y.GetLower(), ref first, (nint)Unsafe.Add(ref slot, step) * stride);
        Four(rows.Z.GetLower(), ref first, (nint)Unsafe.Add(ref slot, 2 * step) * stride);
        Four(rows.W.GetLower(), ref first, (nint)Unsafe.Add(ref slot, 3 * step) * stride);
        Four(rows.X.GetUpper(), ref first, (nint)Unsafe.Add(ref slot, 4 * step) * stride);
        Four(rows.Y.GetUpper(), ref first, (nint)Unsafe.Add(ref slot, 5 * step) * stride);
        Four(rows.Z.GetUpper(), ref first, (nint)Unsafe.Add(ref slot, 6 * step) * stride);
        Four(rows.W.GetUpper(), ref first, (nint)Unsafe.Add(ref slot, 7 * step) * stride);
    }

    /// <summary>Puts three numbers of a slot that has no more.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Put(in WideVector value, ref float first, ref int slot, int step)
    {
        const int Stride = Vectors.Components;
        var rows = TurnedOver(value.X, value.Y, value.Z, value.Z);
        Three(rows.X.GetLower(), ref first, (nint)slot * Stride);
        Three(rows.Y.GetLower(), ref first, (nint)Unsafe.Add(ref slot, step) * Stride);
        Three(rows.Z.GetLower(), ref first, (nint)Unsafe.Add(ref slot, 2 * step) * Stride);
        Three(rows.W.GetLower(), ref first, (nint)Unsafe.Add(ref slot, 3 * step) * Stride);
        Three(rows.X.GetUpper(), ref first, (nint)Unsafe.Add(ref slot, 4 * step) * Stride);
        Three(rows.Y.GetUpper(), ref first, (nint)Unsafe.Add(ref slot, 5 * step) * Stride);
        Three(rows.Z.GetUpper(), ref first, (nint)Unsafe.Add(ref slot, 6 * step) * Stride);
        Three(rows.W.GetUpper(), ref first, (nint)Unsafe.Add(ref slot, 7 * step) * Stride);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Four(Vector128<float> row, ref float first, nint at) => row.StoreUnsafe(ref Unsafe.Add(ref first, at));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Three(Vector128<float> row, ref float first, nint at)
    {
        Unsafe.WriteUnaligned(ref Unsafe.As<float, byte>(ref Unsafe.Add(ref first, at)), row.AsDouble().ToScalar());
        Unsafe.Add(ref first, at + 2) = row.GetElement(2);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<float> Two(ref float first, nint lower, nint upper) =>
        Vector256.Create(Vector128.LoadUnsafe(ref Unsafe.Add(ref first, lower)), Vector128.LoadUnsafe(ref Unsafe.Add(ref first, upper)));

    // Each half of a register holds a table of four by four.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static WideTurn TurnedOver(Vector256<float> a, Vector256<float> b, Vector256<float> c, Vector256<float> d)
    {
        var ab = Avx.UnpackLow(a, b);
        var cd = Avx.UnpackLow(c, d);
        var abAfter = Avx.UnpackHigh(a, b);
        var cdAfter = Avx.UnpackHigh(c, d);
        return new()
        {
            X = Avx.Shuffle(ab, cd, 0b01_00_01_00),
            Y = Avx.Shuffle(ab, cd, 0b11_10_11_10),
            Z = Avx.Shuffle(abAfter, cdAfter, 0b01_00_01_00),
            W = Avx.Shuffle(abAfter, cdAfter, 0b11_10_11_10),
        };
    }
}
