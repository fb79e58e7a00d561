using System.Numerics;
using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>A vector for each of several rigs.</summary>
[method: MethodImpl(MethodImplOptions.AggressiveInlining)]
internal readonly struct WideVector(Lane x, Lane y, Lane z)
{
    public readonly Lane X = x;
    public readonly Lane Y = y;
    public readonly Lane Z = z;

    public static WideVector Zero => new(Lanes.Create(0f), Lanes.Create(0f), Lanes.Create(0f));

    public Lane LengthSquared
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => Dot(this, this);
    }

    public Lane Length
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => Lanes.Sqrt(LengthSquared);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector All(Vector3 value) => new(Lanes.Create(value.X), Lanes.Create(value.Y), Lanes.Create(value.Z));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector operator +(in WideVector a, in WideVector b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector operator -(in WideVector a, in WideVector b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector operator *(in WideVector a, Lane factor) => new(a.X * factor, a.Y * factor, a.Z * factor);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector operator -(in WideVector a) => new(-a.X, -a.Y, -a.Z);

    /// <summary>a · factor + b.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector MultiplyAdd(in WideVector a, Lane factor, in WideVector b) => new(
        Lanes.FusedMultiplyAdd(a.X, factor, b.X),
        Lanes.FusedMultiplyAdd(a.Y, factor, b.Y),
        Lanes.FusedMultiplyAdd(a.Z, factor, b.Z));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane Dot(in WideVector a, in WideVector b) =>
        Lanes.FusedMultiplyAdd(a.X, b.X, Lanes.FusedMultiplyAdd(a.Y, b.Y, a.Z * b.Z));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector Cross(in WideVector a, in WideVector b) => new(
        Lanes.FusedMultiplyAdd(a.Y, b.Z, -(a.Z * b.Y)),
        Lanes.FusedMultiplyAdd(a.Z, b.X, -(a.X * b.Z)),
        Lanes.FusedMultiplyAdd(a.X, b.Y, -(a.Y * b.X)));

    /// <summary>The same direction with length one; no vector where there is no direction, as the mask says.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideVector Direction(out Lane isThere)
    {
        var length = Length;
        isThere = Lanes.LessThan(Lanes.Create(Rotation.Tiny), length);
        return Choose(isThere, this * (Lanes.Create(1f) / length), Zero);
    }

    /// <summary>A direction across, always the same for the same vector: away from the axis that it follows least.</summary>
    public WideVector AnyAcross()
    {
        var (one, zero) = (Lanes.Create(1f), Lanes.Create(0f));
        var (x, y, z) = (Lanes.Abs(X), Lanes.Abs(Y), Lanes.Abs(Z));
        var isZ = Lanes.LessThan(z, Lanes.MinNative(x, y));
        var isY = Lanes.LessThan(y, x);
        var least = Choose(isZ, new(zero, zero, one), Choose(isY, new(zero, one, zero), new(one, zero, zero)));
        var across = least.Across(Direction(out var isThere)).Direction(out _);
        return Choose(isThere, across, new(one, zero, zero));
    }

    /// <summary>What is left across a direction of length one.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideVector Across(in WideVector direction) => MultiplyAdd(direction, -Dot(this, direction), this);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector Choose(Lane mask, in WideVector a, in WideVector b) => new(
        Lanes.ConditionalSelect(mask, a.X, b.X),
        Lanes.ConditionalSelect(mask, a.Y, b.Y),
        Lanes.ConditionalSelect(mask, a.Z, b.Z));
}
