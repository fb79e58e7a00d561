using System.Numerics;
using System.Runtime.CompilerServices;

namespace Condyle.Runtime.Kernels;

/// <summary>A rotation for each of several rigs, as a unit quaternion.</summary>
internal readonly struct WideTurn<TLane>(TLane x, TLane y, TLane z, TLane w)
    where TLane : struct, ILane<TLane>
{
    public readonly TLane X = x;
    public readonly TLane Y = y;
    public readonly TLane Z = z;
    public readonly TLane W = w;

    public static WideTurn<TLane> Identity => new(TLane.All(0), TLane.All(0), TLane.All(0), TLane.All(1));

    public WideVector<TLane> Vector
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => new(X, Y, Z);
    }

    public WideTurn<TLane> Inverse
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => new(-X, -Y, -Z, W);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn<TLane> All(Quaternion value) => new(TLane.All(value.X), TLane.All(value.Y), TLane.All(value.Z), TLane.All(value.W));

    /// <summary>The second one first, then the first one, as matrices that multiply columns.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn<TLane> operator *(in WideTurn<TLane> a, in WideTurn<TLane> b) => new(
        TLane.MultiplyAdd(a.W, b.X, TLane.MultiplyAdd(a.X, b.W, TLane.MultiplyAdd(a.Y, b.Z, -(a.Z * b.Y)))),
        TLane.MultiplyAdd(a.W, b.Y, TLane.MultiplyAdd(a.Y, b.W, TLane.MultiplyAdd(a.Z, b.X, -(a.X * b.Z)))),
        TLane.MultiplyAdd(a.W, b.Z, TLane.MultiplyAdd(a.Z, b.W, TLane.MultiplyAdd(a.X, b.Y, -(a.Y * b.X)))),
        TLane.MultiplyAdd(a.W, b.W, -TLane.MultiplyAdd(a.X, b.X, TLane.MultiplyAdd(a.Y, b.Y, a.Z * b.Z))));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TLane Dot(in WideTurn<TLane> a, in WideTurn<TLane> b) =>
        TLane.MultiplyAdd(a.X, b.X, TLane.MultiplyAdd(a.Y, b.Y, TLane.MultiplyAdd(a.Z, b.Z, a.W * b.W)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn<TLane> Choose(TLane mask, in WideTurn<TLane> a, in WideTurn<TLane> b) => new(
        TLane.Choose(mask, a.X, b.X),
        TLane.Choose(mask, a.Y, b.Y),
        TLane.Choose(mask, a.Z, b.Z),
        TLane.Choose(mask, a.W, b.W));

    /// <summary>The turned vector: v + 2w(u × v) + 2u × (u × v).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideVector<TLane> Rotate(in WideVector<TLane> v)
    {
        var u = Vector;
        var twice = WideVector<TLane>.Cross(u, v);
        twice += twice;
        return WideVector<TLane>.MultiplyAdd(twice, W, v) + WideVector<TLane>.Cross(u, twice);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideTurn<TLane> Normalized() => Times(TLane.All(1) / TLane.Sqrt(Dot(this, this)));

    /// <summary>A product of unit quaternions with its rounding taken back: one step of Newton's method for 1 / √|q|² from one.</summary>
    /// <remarks>Without it a drive doubles what its frames are off from length one, and a chain of drives shows it.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideTurn<TLane> Trued() => Times(TLane.MultiplyAdd(Dot(this, this), TLane.All(-0.5f), TLane.All(1.5f)));

    /// <summary>The axes of the turned frame, at an origin.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideAffine<TLane> At(in WideVector<TLane> origin)
    {
        var (x2, y2, z2) = (X + X, Y + Y, Z + Z);
        var (wx, wy, wz) = (W * x2, W * y2, W * z2);
        var (xx, yy, zz) = (X * x2, Y * y2, Z * z2);
        var one = TLane.All(1);
        return new(
            new(one - (yy + zz), TLane.MultiplyAdd(X, y2, wz), TLane.MultiplyAdd(X, z2, -wy)),
            new(TLane.MultiplyAdd(X, y2, -wz), one - (xx + zz), TLane.MultiplyAdd(Y, z2, wx)),
            new(TLane.MultiplyAdd(X, z2, wy), TLane.MultiplyAdd(Y, z2, -wx), one - (xx + yy)),
            origin);
    }

    /// <summary>
    /// From <paramref name="a"/> to <paramref name="b"/> on the shortest arc (Shoemake 1985), the amount from 0 to 1; at a half turn apart, where there are two
    /// such arcs, on the one that the signs as given say.
    /// </summary>
    /// <remarks>With θ the angle between the quaternions, sin((1 − k)θ) / sin θ and sin(kθ) / sin θ; θ² comes from their chord.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn<TLane> Slerp(in WideTurn<TLane> a, in WideTurn<TLane> b, TLane amount)
    {
        var sign = TLane.Choose(TLane.Less(Dot(a, b), TLane.All(0)), TLane.All(-1), TLane.All(1));
        var (x, y, z, w) = (TLane.MultiplyAdd(-sign, b.X, a.X), TLane.MultiplyAdd(-sign, b.Y, a.Y), TLane.MultiplyAdd(-sign, b.Z, a.Z), TLane.MultiplyAdd(-sign, b.W, a.W));
        var chord = TLane.MultiplyAdd(x, x, TLane.MultiplyAdd(y, y, TLane.MultiplyAdd(z, z, w * w)));
        var squared = Arc<TLane>.Squared(chord * TLane.All(0.25f));
        var rest = TLane.All(1) - amount;
        var ofA = rest * Arc<TLane>.Sine(rest * rest * squared);
        var ofB = amount * Arc<TLane>.Sine(amount * amount * squared) * sign;
        return new WideTurn<TLane>(
            TLane.MultiplyAdd(a.X, ofA, b.X * ofB),
            TLane.MultiplyAdd(a.Y, ofA, b.Y * ofB),
            TLane.MultiplyAdd(a.Z, ofA, b.Z * ofB),
            TLane.MultiplyAdd(a.W, ofA, b.W * ofB)).Normalized(); // which takes the division by sin θ with it
    }

    /// <summary>The rotation whose frame has these axes, right-handed, of length one and across each other (Shepperd 1978: a large component first).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn<TLane> FromAxes(in WideVector<TLane> x, in WideVector<TLane> y, in WideVector<TLane> z)
    {
        var one = TLane.All(1);
        var (xy, xz, yz) = (x.Y + y.X, z.X + x.Z, y.Z + z.Y);
        var (ofX, ofY, ofZ) = (y.Z - z.Y, z.X - x.Z, x.Y - y.X);
        var isBelow = TLane.Less(z.Z, TLane.All(0));
        var isX = TLane.Less(y.Y, x.X);
        var isZ = TLane.Less(x.X, -y.Y);
        var below = Choose(isX, new(one + x.X - y.Y - z.Z, xy, xz, ofX), new(xy, one - x.X + y.Y - z.Z, yz, ofY));
        var above = Choose(isZ, new(xz, yz, one - x.X - y.Y + z.Z, ofZ), new(ofX, ofY, ofZ, one + x.X + y.Y + z.Z));
        return Choose(isBelow, below, above).Normalized();
    }

    /// <summary>The smallest turn that brings one direction onto another; where they are opposite, the half turn about <paramref name="axisWhenOpposite"/>.</summary>
    public static WideTurn<TLane> Between(in WideVector<TLane> from, in WideVector<TLane> to, in WideVector<TLane> axisWhenOpposite)
    {
        // Half-angle form: the sum of two unit vectors points halfway between them.
        var sum = from + to;
        var length = sum.Length;
        var isTurn = TLane.Less(TLane.All(Rotation.Flat), length);
        var half = sum * (TLane.All(1) / length);
        var cross = WideVector<TLane>.Cross(from, half);
        var turn = new WideTurn<TLane>(cross.X, cross.Y, cross.Z, WideVector<TLane>.Dot(from, half)).Normalized();
        return Choose(isTurn, turn, new(axisWhenOpposite.X, axisWhenOpposite.Y, axisWhenOpposite.Z, TLane.All(0)));
    }

    /// <summary>The half angle along the axis of a rotation's short way, at most a quarter turn.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideVector<TLane> Log()
    {
        var sign = TLane.Choose(TLane.Less(W, TLane.All(0)), TLane.All(-1), TLane.All(1));
        var fromOne = TLane.MultiplyAdd(W, sign, TLane.All(-1));
        var squared = Arc<TLane>.Squared(TLane.MultiplyAdd(fromOne, fromOne, Vector.LengthSquared) * TLane.All(0.25f));
        return Vector * (sign / Arc<TLane>.Sine(squared));
    }

    /// <summary>The rotation of a half angle along an axis, at most a quarter turn.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn<TLane> Exp(in WideVector<TLane> halfAngle)
    {
        var squared = halfAngle.LengthSquared;
        var vector = halfAngle * Arc<TLane>.Sine(squared);
        return new(vector.X, vector.Y, vector.Z, Arc<TLane>.Cosine(squared));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private WideTurn<TLane> Times(TLane factor) => new(X * factor, Y * factor, Z * factor, W * factor);
}
