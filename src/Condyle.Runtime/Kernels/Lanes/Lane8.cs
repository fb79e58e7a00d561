using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Condyle.Runtime.Kernels;

/// <summary>Eight rigs in a register of 256 bits.</summary>
internal readonly struct Lane8 : ILane<Lane8>
{
    private readonly Vector256<float> value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Lane8(Vector256<float> value) => this.value = value;

    public static int Width => 8;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 All(float value) => new(Vector256.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Load(ref float first) => new(Vector256.LoadUnsafe(ref first));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store(Lane8 value, ref float first) => value.value.StoreUnsafe(ref first);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator +(Lane8 a, Lane8 b) => new(a.value + b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator -(Lane8 a, Lane8 b) => new(a.value - b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator *(Lane8 a, Lane8 b) => new(a.value * b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator /(Lane8 a, Lane8 b) => new(a.value / b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator -(Lane8 a) => new(-a.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 MultiplyAdd(Lane8 a, Lane8 b, Lane8 c) => new(Vector256.FusedMultiplyAdd(a.value, b.value, c.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Sqrt(Lane8 a) => new(Vector256.Sqrt(a.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Abs(Lane8 a) => new(Vector256.Abs(a.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Min(Lane8 a, Lane8 b) => new(Vector256.ConditionalSelect(Vector256.LessThan(a.value, b.value), a.value, b.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Max(Lane8 a, Lane8 b) => new(Vector256.ConditionalSelect(Vector256.LessThan(a.value, b.value), b.value, a.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Less(Lane8 a, Lane8 b) => new(Vector256.LessThan(a.value, b.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Both(Lane8 a, Lane8 b) => new(a.value & b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Choose(Lane8 mask, Lane8 a, Lane8 b) => new(Vector256.ConditionalSelect(mask.value, a.value, b.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Every(Lane8 mask) => mask.value.ExtractMostSignificantBits() == 0xFF;
}
