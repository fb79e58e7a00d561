using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Condyle.Runtime.Kernels;

/// <summary>One rig. Only the first number of the register counts; it saves moving between kinds of registers.</summary>
internal readonly struct Lane1 : ILane<Lane1>
{
    private readonly Vector128<float> value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Lane1(Vector128<float> value) => this.value = value;

    public static int Width => 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 All(float value) => new(Vector128.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Load(ref float first) => new(Vector128.CreateScalar(first));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store(Lane1 value, ref float first) => first = value.value.ToScalar();

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator +(Lane1 a, Lane1 b) => new(a.value + b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator -(Lane1 a, Lane1 b) => new(a.value - b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator *(Lane1 a, Lane1 b) => new(a.value * b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator /(Lane1 a, Lane1 b) => new(a.value / b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator -(Lane1 a) => new(-a.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 MultiplyAdd(Lane1 a, Lane1 b, Lane1 c) => new(Vector128.FusedMultiplyAdd(a.value, b.value, c.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Sqrt(Lane1 a) => new(Vector128.Sqrt(a.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Abs(Lane1 a) => new(Vector128.Abs(a.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Min(Lane1 a, Lane1 b) => new(Vector128.ConditionalSelect(Vector128.LessThan(a.value, b.value), a.value, b.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Max(Lane1 a, Lane1 b) => new(Vector128.ConditionalSelect(Vector128.LessThan(a.value, b.value), b.value, a.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Less(Lane1 a, Lane1 b) => new(Vector128.LessThan(a.value, b.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Both(Lane1 a, Lane1 b) => new(a.value & b.value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Choose(Lane1 mask, Lane1 a, Lane1 b) => new(Vector128.ConditionalSelect(mask.value, a.value, b.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool Every(Lane1 mask) => (mask.value.ExtractMostSignificantBits() & 1) != 0;
}
