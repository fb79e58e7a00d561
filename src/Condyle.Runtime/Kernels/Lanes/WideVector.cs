using System.Numerics;
using System.Runtime.CompilerServices;

namespace Condyle.Runtime.Kernels;

/// <summary>A vector for each of several rigs.</summary>
internal readonly struct WideVector<TLane>(TLane x, TLane y, TLane z)
    where TLane : struct, ILane<TLane>
{
    public readonly TLane X = x;
    public readonly TLane Y = y;
    public readonly TLane Z = z;

    public static WideVector<TLane> Zero => new(TLane.All(0), TLane.All(0), TLane.All(0));

    public TLane LengthSquared
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => Dot(this, this);
    }

    public TLane Length
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => TLane.Sqrt(LengthSquared);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector<TLane> All(Vector3 value) => new(TLane.All(value.X), TLane.All(value.Y), TLane.All(value.Z));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector<TLane> operator +(in WideVector<TLane> a, in WideVector<TLane> b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector<TLane> operator -(in WideVector<TLane> a, in WideVector<TLane> b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector<TLane> operator *(in WideVector<TLane> a, TLane factor) => new(a.X * factor, a.Y * factor, a.Z * factor);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector<TLane> operator -(in WideVector<TLane> a) => new(-a.X, -a.Y, -a.Z);

    /// <summary>a · factor + b.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector<TLane> MultiplyAdd(in WideVector<TLane> a, TLane factor, in WideVector<TLane> b) => new(
        TLane.MultiplyAdd(a.X, factor, b.X),
        TLane.MultiplyAdd(a.Y, factor, b.Y),
        TLane.MultiplyAdd(a.Z, factor, b.Z));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLane Dot(in WideVector<TLane> a, in WideVector<TLane> b) =>
        TLane.MultiplyAdd(a.X, b.X, TLane.MultiplyAdd(a.Y, b.Y, a.Z * b.Z));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector<TLane> Cross(in WideVector<TLane> a, in WideVector<TLane> b) => new(
        TLane.MultiplyAdd(a.Y, b.Z, -(a.Z * b.Y)),
        TLane.MultiplyAdd(a.Z, b.X, -(a.X * b.Z)),
        TLane.MultiplyAdd(a.X, b.Y, -(a.Y * b.X)));

    /// <summary>The same direction with length one; no vector where there is no direction, as the mask says.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideVector<TLane> Direction(out TLane isThere)
    {
        var length = Length;
        isThere = TLane.Less(TLane.All(Rotation.Tiny), length);
        return Choose(isThere, this * (TLane.All(1) / length), Zero);
    }

    /// <summary>A direction across, always the same for the same vector: away from the axis that it follows least.</summary>
    public WideVector<TLane> AnyAcross()
    {
        var (one, zero) = (TLane.All(1), TLane.All(0));
        var (x, y, z) = (TLane.Abs(X), TLane.Abs(Y), TLane.Abs(Z));
        var isZ = TLane.Less(z, TLane.Min(x, y));
        var isY = TLane.Less(y, x);
        var least = Choose(isZ, new(zero, zero, one), Choose(isY, new(zero, one, zero), new(one, zero, zero)));
        var across = least.Across(Direction(out var isThere)).Direction(out _);
        return Choose(isThere, across, new(one, zero, zero));
    }

    /// <summary>What is left across a direction of length one.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideVector<TLane> Across(in WideVector<TLane> direction) => MultiplyAdd(direction, -Dot(this, direction), this);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector<TLane> Choose(TLane mask, in WideVector<TLane> a, in WideVector<TLane> b) => new(
        TLane.Choose(mask, a.X, b.X),
        TLane.Choose(mask, a.Y, b.Y),
        TLane.Choose(mask, a.Z, b.Z));
}
