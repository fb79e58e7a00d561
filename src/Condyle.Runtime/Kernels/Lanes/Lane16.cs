using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Condyle.Runtime.Kernels;

/// <summary>Sixteen rigs in a register of 512 bits.</summary>
internal readonly struct Lane16 : ILane<Lane16>
{
    private readonly Vector512<float> value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Lane16(Vector512<float> value) => this.value = value;

    public static int Width => 16;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 All(float value) => new(Vector512.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 Load(ref float first) => new(Vector512.LoadUnsafe(ref first));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store(Lane16 value, ref float first) => value.value.StoreUnsafe(ref first);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 operator +(Lane16 a, Lane16 b) => new(a.value + b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 operator -(Lane16 a, Lane16 b) => new(a.value - b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 operator *(Lane16 a, Lane16 b) => new(a.value * b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 operator /(Lane16 a, Lane16 b) => new(a.value / b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 operator -(Lane16 a) => new(-a.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 MultiplyAdd(Lane16 a, Lane16 b, Lane16 c) => new(Vector512.FusedMultiplyAdd(a.value, b.value, c.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 Sqrt(Lane16 a) => new(Vector512.Sqrt(a.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 Abs(Lane16 a) => new(Vector512.Abs(a.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 Min(Lane16 a, Lane16 b) => new(Vector512.ConditionalSelect(Vector512.LessThan(a.value, b.value), a.value, b.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 Max(Lane16 a, Lane16 b) => new(Vector512.ConditionalSelect(Vector512.LessThan(a.value, b.value), b.value, a.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 Less(Lane16 a, Lane16 b) => new(Vector512.LessThan(a.value, b.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 Both(Lane16 a, Lane16 b) => new(a.value & b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane16 Choose(Lane16 mask, Lane16 a, Lane16 b) => new(Vector512.ConditionalSelect(mask.value, a.value, b.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Every(Lane16 mask) => mask.value.ExtractMostSignificantBits() == 0xFFFF;
}
