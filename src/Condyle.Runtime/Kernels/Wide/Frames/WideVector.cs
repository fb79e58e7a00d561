using System.Numerics;
using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>A vector for each of several rigs.</summary>
internal struct WideVector
{
    public Lane X;
    public Lane Y;
    public Lane Z;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideVector(Lane x, Lane y, Lane z) => (X, Y, Z) = (x, y, z);

    public static WideVector Zero
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => new() { X = Lanes.Create(0f), Y = Lanes.Create(0f), Z = Lanes.Create(0f) };
    }

    public readonly Lane LengthSquared
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => Dot(this, this);
    }

    public readonly Lane Length
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => Lanes.Sqrt(LengthSquared);
    }

    /// <summary>Its lengths along the axes together: no less than its length, and no root to draw.</summary>
    public readonly Lane Span
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => Lanes.Abs(X) + Lanes.Abs(Y) + Lanes.Abs(Z);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector All(in Vector3 value)
    {
        ref var first = ref Unsafe.As<Vector3, float>(ref Unsafe.AsRef(in value));
        return new() { X = Lanes.Create(first), Y = Lanes.Create(Unsafe.Add(ref first, 1)), Z = Lanes.Create(Unsafe.Add(ref first, 2)) };
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector operator +(in WideVector a, in WideVector b) => new() { X = a.X + b.X, Y = a.Y + b.Y, Z = a.Z + b.Z };

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector operator -(in WideVector a, in WideVector b) => new() { X = a.X - b.X, Y = a.Y - b.Y, Z = a.Z - b.Z };

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector operator *(in WideVector a, Lane factor) => new() { X = a.X * factor, Y = a.Y * factor, Z = a.Z * factor };

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector operator -(in WideVector a) => new() { X = -a.X, Y = -a.Y, Z = -a.Z };

    /// <summary>a · factor + b.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector MultiplyAdd(in WideVector a, Lane factor, in WideVector b) => new()
    {
        X = Lanes.FusedMultiplyAdd(a.X, factor, b.X),
        Y = Lanes.FusedMultiplyAdd(a.Y, factor, b.Y),
        Z = Lanes.FusedMultiplyAdd(a.Z, factor, b.Z),
    };

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane Dot(in WideVector a, in WideVector b) =>
        Lanes.FusedMultiplyAdd(a.X, b.X, Lanes.FusedMultiplyAdd(a.Y, b.Y, a.Z * b.Z));

    /// <remarks>Sums are kept in variables of their own: the compiler at run time then adds to them in place, and copies nothing.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector Cross(in WideVector a, in WideVector b)
    {
        var x = a.Y * b.Z;
        var y = a.Z * b.X;
        var z = a.X * b.Y;
        x = Rigs.Less(x, a.Z, b.Y);
        y = Rigs.Less(y, a.X, b.Z);
        z = Rigs.Less(z, a.Y, b.X);
        return new() { X = x, Y = y, Z = z };
    }

    /// <summary>a × b + c.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector CrossAdd(in WideVector a, in WideVector b, in WideVector c)
    {
        var (x, y, z) = (c.X, c.Y, c.Z);
        x = Lanes.FusedMultiplyAdd(a.Y, b.Z, x);
        y = Lanes.FusedMultiplyAdd(a.Z, b.X, y);
        z = Lanes.FusedMultiplyAdd(a.X, b.Y, z);
        x = Rigs.Less(x, a.Z, b.Y);
        y = Rigs.Less(y, a.X, b.Z);
        z = Rigs.Less(z, a.Y, b.X);
        return new() { X = x, Y = y, Z = z };
    }

    /// <summary>The same direction with length one; no vector where there is no direction, as the mask says.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly WideVector Direction(out Lane isThere)
    {
        var length = Length;
        isThere = Lanes.LessThan(Lanes.Create(Rotation.Tiny), length);
        return Choose(isThere, this * (Lanes.Create(1f) / length), Zero);
    }

    /// <summary>A direction across, always the same for the same vector: away from the axis that it follows least.</summary>
    public readonly WideVector AnyAcross()
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
    public readonly WideVector Across(in WideVector direction) => MultiplyAdd(direction, -Dot(this, direction), this);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector Choose(Lane mask, in WideVector a, in WideVector b) => new()
    {
        X = Lanes.ConditionalSelect(mask, a.X, b.X),
        Y = Lanes.ConditionalSelect(mask, a.Y, b.Y),
        Z = Lanes.ConditionalSelect(mask, a.Z, b.Z),
    };
}
