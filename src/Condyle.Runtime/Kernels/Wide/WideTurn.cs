using System.Numerics;
using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>A rotation for each of several rigs, as a unit quaternion.</summary>
[method: MethodImpl(MethodImplOptions.AggressiveInlining)]
internal readonly struct WideTurn(Lane x, Lane y, Lane z, Lane w)
{
    public readonly Lane X = x;
    public readonly Lane Y = y;
    public readonly Lane Z = z;
    public readonly Lane W = w;

    public static WideTurn Identity => new(Lanes.Create(0f), Lanes.Create(0f), Lanes.Create(0f), Lanes.Create(1f));

    public WideVector Vector
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => new(X, Y, Z);
    }

    public WideTurn Inverse
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => new(-X, -Y, -Z, W);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn All(Quaternion value) => new(Lanes.Create(value.X), Lanes.Create(value.Y), Lanes.Create(value.Z), Lanes.Create(value.W));

    /// <summary>The second one first, then the first one, as matrices that multiply columns.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn operator *(in WideTurn a, in WideTurn b) => new(
        Lanes.FusedMultiplyAdd(a.W, b.X, Lanes.FusedMultiplyAdd(a.X, b.W, Lanes.FusedMultiplyAdd(a.Y, b.Z, -(a.Z * b.Y)))),
        Lanes.FusedMultiplyAdd(a.W, b.Y, Lanes.FusedMultiplyAdd(a.Y, b.W, Lanes.FusedMultiplyAdd(a.Z, b.X, -(a.X * b.Z)))),
        Lanes.FusedMultiplyAdd(a.W, b.Z, Lanes.FusedMultiplyAdd(a.Z, b.W, Lanes.FusedMultiplyAdd(a.X, b.Y, -(a.Y * b.X)))),
        Lanes.FusedMultiplyAdd(a.W, b.W, -Lanes.FusedMultiplyAdd(a.X, b.X, Lanes.FusedMultiplyAdd(a.Y, b.Y, a.Z * b.Z))));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane Dot(in WideTurn a, in WideTurn b) =>
        Lanes.FusedMultiplyAdd(a.X, b.X, Lanes.FusedMultiplyAdd(a.Y, b.Y, Lanes.FusedMultiplyAdd(a.Z, b.Z, a.W * b.W)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn Choose(Lane mask, in WideTurn a, in WideTurn b) => new(
        Lanes.ConditionalSelect(mask, a.X, b.X),
        Lanes.ConditionalSelect(mask, a.Y, b.Y),
        Lanes.ConditionalSelect(mask, a.Z, b.Z),
        Lanes.ConditionalSelect(mask, a.W, b.W));

    /// <summary>The turned vector: v + 2w(u × v) + 2u × (u × v).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideVector Rotate(in WideVector v)
    {
        var u = Vector;
        var twice = WideVector.Cross(u, v);
        twice += twice;
        return WideVector.MultiplyAdd(twice, W, v) + WideVector.Cross(u, twice);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideTurn Normalized() => Times(Lanes.Create(1f) / Lanes.Sqrt(Dot(this, this)));

    /// <summary>A product of unit quaternions with its rounding taken back: one step of Newton's method for 1 / √|q|² from one.</summary>
    /// <remarks>Without it a drive doubles what its frames are off from length one, and a chain of drives shows it.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideTurn Trued() => Times(Lanes.FusedMultiplyAdd(Dot(this, this), Lanes.Create(-0.5f), Lanes.Create(1.5f)));

    /// <summary>The axes of the turned frame, at an origin.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideAffine At(in WideVector origin)
    {
        var (x2, y2, z2) = (X + X, Y + Y, Z + Z);
        var (wx, wy, wz) = (W * x2, W * y2, W * z2);
        var (xx, yy, zz) = (X * x2, Y * y2, Z * z2);
        var one = Lanes.Create(1f);
        return new(
            new(one - (yy + zz), Lanes.FusedMultiplyAdd(X, y2, wz), Lanes.FusedMultiplyAdd(X, z2, -wy)),
            new(Lanes.FusedMultiplyAdd(X, y2, -wz), one - (xx + zz), Lanes.FusedMultiplyAdd(Y, z2, wx)),
            new(Lanes.FusedMultiplyAdd(X, z2, wy), Lanes.FusedMultiplyAdd(Y, z2, -wx), one - (xx + yy)),
            origin);
    }

    /// <summary>
    /// From <paramref name="a"/> to <paramref name="b"/> on the shortest arc (Shoemake 1985), the amount from 0 to 1; at a half turn apart, where there are two
    /// such arcs, on the one that the signs as given say.
    /// </summary>
    /// <remarks>With θ the angle between the quaternions, sin((1 − k)θ) / sin θ and sin(kθ) / sin θ; θ² comes from their chord.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn Slerp(in WideTurn a, in WideTurn b, Lane amount)
    {
        var sign = Lanes.ConditionalSelect(Lanes.LessThan(Dot(a, b), Lanes.Create(0f)), Lanes.Create(-1f), Lanes.Create(1f));
        var (x, y, z, w) = (Lanes.FusedMultiplyAdd(-sign, b.X, a.X), Lanes.FusedMultiplyAdd(-sign, b.Y, a.Y), Lanes.FusedMultiplyAdd(-sign, b.Z, a.Z), Lanes.FusedMultiplyAdd(-sign, b.W, a.W));
        var chord = Lanes.FusedMultiplyAdd(x, x, Lanes.FusedMultiplyAdd(y, y, Lanes.FusedMultiplyAdd(z, z, w * w)));
        var squared = Arc.Squared(chord * Lanes.Create(0.25f));
        var rest = Lanes.Create(1f) - amount;
        var ofA = rest * Arc.Sine(rest * rest * squared);
        var ofB = amount * Arc.Sine(amount * amount * squared) * sign;
        return new WideTurn(
            Lanes.FusedMultiplyAdd(a.X, ofA, b.X * ofB),
            Lanes.FusedMultiplyAdd(a.Y, ofA, b.Y * ofB),
            Lanes.FusedMultiplyAdd(a.Z, ofA, b.Z * ofB),
            Lanes.FusedMultiplyAdd(a.W, ofA, b.W * ofB)).Normalized(); // which takes the division by sin θ with it
    }

    /// <summary>The rotation whose frame has these axes, right-handed, of length one and across each other (Shepperd 1978: a large component first).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn FromAxes(in WideVector x, in WideVector y, in WideVector z)
    {
        var one = Lanes.Create(1f);
        var (xy, xz, yz) = (x.Y + y.X, z.X + x.Z, y.Z + z.Y);
        var (ofX, ofY, ofZ) = (y.Z - z.Y, z.X - x.Z, x.Y - y.X);
        var isBelow = Lanes.LessThan(z.Z, Lanes.Create(0f));
        var isX = Lanes.LessThan(y.Y, x.X);
        var isZ = Lanes.LessThan(x.X, -y.Y);
        var below = Choose(isX, new(one + x.X - y.Y - z.Z, xy, xz, ofX), new(xy, one - x.X + y.Y - z.Z, yz, ofY));
        var above = Choose(isZ, new(xz, yz, one - x.X - y.Y + z.Z, ofZ), new(ofX, ofY, ofZ, one + x.X + y.Y + z.Z));
        return Choose(isBelow, below, above).Normalized();
    }

    /// <summary>The smallest turn that brings one direction onto another; where they are opposite, the half turn about <paramref name="axisWhenOpposite"/>.</summary>
    public static WideTurn Between(in WideVector from, in WideVector to, in WideVector axisWhenOpposite)
    {
        // Half-angle form: the sum of two unit vectors points halfway between them.
        var sum = from + to;
        var length = sum.Length;
        var isTurn = Lanes.LessThan(Lanes.Create(Rotation.Flat), length);
        var half = sum * (Lanes.Create(1f) / length);
        var cross = WideVector.Cross(from, half);
        var turn = new WideTurn(cross.X, cross.Y, cross.Z, WideVector.Dot(from, half)).Normalized();
        return Choose(isTurn, turn, new(axisWhenOpposite.X, axisWhenOpposite.Y, axisWhenOpposite.Z, Lanes.Create(0f)));
    }

    /// <summary>The half angle along the axis of a rotation's short way, at most a quarter turn.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideVector Log()
    {
        var sign = Lanes.ConditionalSelect(Lanes.LessThan(W, Lanes.Create(0f)), Lanes.Create(-1f), Lanes.Create(1f));
        var fromOne = Lanes.FusedMultiplyAdd(W, sign, Lanes.Create(-1f));
        var squared = Arc.Squared(Lanes.FusedMultiplyAdd(fromOne, fromOne, Vector.LengthSquared) * Lanes.Create(0.25f));
        return Vector * (sign / Arc.Sine(squared));
    }

    /// <summary>The rotation of a half angle along an axis, at most a quarter turn.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn Exp(in WideVector halfAngle)
    {
        var squared = halfAngle.LengthSquared;
        var vector = halfAngle * Arc.Sine(squared);
        return new(vector.X, vector.Y, vector.Z, Arc.Cosine(squared));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private WideTurn Times(Lane factor) => new(X * factor, Y * factor, Z * factor, W * factor);
}
