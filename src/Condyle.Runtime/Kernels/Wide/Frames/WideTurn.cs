using System.Numerics;
using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>A rotation for each of several rigs, as a unit quaternion.</summary>
internal struct WideTurn
{
    public Lane X;
    public Lane Y;
    public Lane Z;
    public Lane W;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideTurn(Lane x, Lane y, Lane z, Lane w) => (X, Y, Z, W) = (x, y, z, w);

    public static WideTurn Identity => new(Lanes.Create(0f), Lanes.Create(0f), Lanes.Create(0f), Lanes.Create(1f));

    public readonly WideVector Vector
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => new() { X = X, Y = Y, Z = Z };
    }

    public readonly WideTurn Inverse
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => new() { X = -X, Y = -Y, Z = -Z, W = W };
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn All(in Quaternion value)
    {
        ref var first = ref Unsafe.As<Quaternion, float>(ref Unsafe.AsRef(in value));
        return new()
        {
            X = Lanes.Create(first),
            Y = Lanes.Create(Unsafe.Add(ref first, 1)),
            Z = Lanes.Create(Unsafe.Add(ref first, 2)),
            W = Lanes.Create(Unsafe.Add(ref first, 3)),
        };
    }

    /// <summary>The second one first, then the first one, as matrices that multiply columns.</summary>
    /// <inheritdoc cref="WideVector.Cross" path="/remarks"/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn operator *(in WideTurn a, in WideTurn b)
    {
        // Here and in Seen: with WideVector.Cross for these six products, a frame of the yardstick took some 2 % longer, side by side and alone.
        var x = a.Y * b.Z;
        var y = a.Z * b.X;
        var z = a.X * b.Y;
        var w = a.W * b.W;
        x = Rigs.Less(x, a.Z, b.Y);
        y = Rigs.Less(y, a.X, b.Z);
        z = Rigs.Less(z, a.Y, b.X);
        w = Rigs.Less(w, a.Z, b.Z);
        x = Lanes.FusedMultiplyAdd(a.X, b.W, x);
        y = Lanes.FusedMultiplyAdd(a.Y, b.W, y);
        z = Lanes.FusedMultiplyAdd(a.Z, b.W, z);
        w = Rigs.Less(w, a.Y, b.Y);
        x = Lanes.FusedMultiplyAdd(a.W, b.X, x);
        y = Lanes.FusedMultiplyAdd(a.W, b.Y, y);
        z = Lanes.FusedMultiplyAdd(a.W, b.Z, z);
        w = Rigs.Less(w, a.X, b.X);
        return new() { X = x, Y = y, Z = z, W = w };
    }

    /// <summary>Another turn first, about the first axis, then this one.</summary>
    /// <param name="half">Sine and cosine of half its angle.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly WideTurn AboutFirst((Lane Sine, Lane Cosine) half) => new()
    {
        X = Lanes.FusedMultiplyAdd(W, half.Sine, X * half.Cosine),
        Y = Lanes.FusedMultiplyAdd(Z, half.Sine, Y * half.Cosine),
        Z = Rigs.Less(Z * half.Cosine, Y, half.Sine),
        W = Rigs.Less(W * half.Cosine, X, half.Sine),
    };

    /// <summary>The same about the second axis.</summary>
    /// <inheritdoc cref="AboutFirst"/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly WideTurn AboutSecond((Lane Sine, Lane Cosine) half) => new()
    {
        X = Rigs.Less(X * half.Cosine, Z, half.Sine),
        Y = Lanes.FusedMultiplyAdd(W, half.Sine, Y * half.Cosine),
        Z = Lanes.FusedMultiplyAdd(X, half.Sine, Z * half.Cosine),
        W = Rigs.Less(W * half.Cosine, Y, half.Sine),
    };

    /// <summary>The same about the third axis.</summary>
    /// <inheritdoc cref="AboutFirst"/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly WideTurn AboutThird((Lane Sine, Lane Cosine) half) => new()
    {
        X = Lanes.FusedMultiplyAdd(Y, half.Sine, X * half.Cosine),
        Y = Rigs.Less(Y * half.Cosine, X, half.Sine),
        Z = Lanes.FusedMultiplyAdd(W, half.Sine, Z * half.Cosine),
        W = Rigs.Less(W * half.Cosine, Z, half.Sine),
    };

    /// <summary>A turn as it is seen in another one: outer⁻¹ · inner.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn Seen(in WideTurn outer, in WideTurn inner)
    {
        var x = outer.Z * inner.Y;
        var y = outer.X * inner.Z;
        var z = outer.Y * inner.X;
        var w = outer.W * inner.W;
        x = Rigs.Less(x, outer.Y, inner.Z);
        y = Rigs.Less(y, outer.Z, inner.X);
        z = Rigs.Less(z, outer.X, inner.Y);
        w = Lanes.FusedMultiplyAdd(outer.Z, inner.Z, w);
        x = Rigs.Less(x, outer.X, inner.W);
        y = Rigs.Less(y, outer.Y, inner.W);
        z = Rigs.Less(z, outer.Z, inner.W);
        w = Lanes.FusedMultiplyAdd(outer.Y, inner.Y, w);
        x = Lanes.FusedMultiplyAdd(outer.W, inner.X, x);
        y = Lanes.FusedMultiplyAdd(outer.W, inner.Y, y);
        z = Lanes.FusedMultiplyAdd(outer.W, inner.Z, z);
        w = Lanes.FusedMultiplyAdd(outer.X, inner.X, w);
        return new() { X = x, Y = y, Z = z, W = w };
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane Dot(in WideTurn a, in WideTurn b)
    {
        var (one, other) = (a.Y * b.Y, a.W * b.W);
        one = Lanes.FusedMultiplyAdd(a.X, b.X, one);
        other = Lanes.FusedMultiplyAdd(a.Z, b.Z, other);
        return one + other;
    }

    /// <summary>|a − sign · b|².</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane ChordSquared(in WideTurn a, in WideTurn b, Lane sign)
    {
        var x = Rigs.Less(a.X, sign, b.X);
        var y = Rigs.Less(a.Y, sign, b.Y);
        var z = Rigs.Less(a.Z, sign, b.Z);
        var w = Rigs.Less(a.W, sign, b.W);
        return Lanes.FusedMultiplyAdd(x, x, y * y) + Lanes.FusedMultiplyAdd(z, z, w * w);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn Choose(Lane mask, in WideTurn a, in WideTurn b) => new()
    {
        X = Lanes.ConditionalSelect(mask, a.X, b.X),
        Y = Lanes.ConditionalSelect(mask, a.Y, b.Y),
        Z = Lanes.ConditionalSelect(mask, a.Z, b.Z),
        W = Lanes.ConditionalSelect(mask, a.W, b.W),
    };

    /// <summary>The turned vector from a point on.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly WideVector Rotate(in WideVector v, in WideVector from) => Rotate(v) + from;

    /// <summary>The turned vector.</summary>
    /// <remarks>v + w·t + u × t with t = 2 u × v: a processor that multiplies in one place and adds in another does all additions beside the products.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly WideVector Rotate(in WideVector v)
    {
        var cross = WideVector.Cross(Vector, v);
        var twice = cross + cross;
        return WideVector.CrossAdd(Vector, twice, twice * W) + v;
    }

    /// <summary>The vector that turned is this one.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly WideVector RotateBack(in WideVector v)
    {
        var cross = WideVector.Cross(v, Vector);
        var twice = cross + cross;
        return WideVector.CrossAdd(twice, Vector, twice * W) + v;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly WideTurn Normalized() => OfLength(Dot(this, this));

    /// <summary>Brought to length one.</summary>
    /// <param name="squared">The square of its length.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly WideTurn OfLength(Lane squared) => Times(Lanes.Create(1f) / Lanes.Sqrt(squared));

    /// <summary>A product of unit quaternions with its rounding taken back: one step of Newton's method for 1 / √|q|² from one.</summary>
    /// <remarks>Without it a drive doubles what its frames are off from length one, and a chain of drives shows it.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly WideTurn Trued() => Times(Lanes.FusedMultiplyAdd(Dot(this, this), Lanes.Create(-0.5f), Lanes.Create(1.5f)));

    /// <summary>The axes of the turned frame, at an origin.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly WideAffine At(in WideVector origin)
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
    /// <remarks>
    /// With θ the angle between the quaternions, the shares are sin(kθ) / sin θ = k · sin(kθ) / kθ · θ / sin θ. What rounding of the cosine moves them by is less than theirs;
    /// the last factor is that of both, so that its error turns nothing.
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn Slerp(in WideTurn a, in WideTurn b, Lane amount)
    {
        var one = Lanes.Create(1f);
        var cosine = Dot(a, b);
        var overSine = Arc.OverSineFrom(one - Lanes.Abs(cosine));
        var squared = Rigs.Less(one, cosine, cosine) * (overSine * overSine);
        var rest = one - amount;
        var sign = Lanes.ConditionalSelect(Lanes.LessThan(cosine, Lanes.Create(0f)), Lanes.Create(-0f), Lanes.Create(0f));
        var ofA = rest * overSine * Arc.Sine(rest * rest * squared);
        var ofB = (amount * overSine * Arc.Sine(amount * amount * squared)) ^ sign;
        var (x, y, z, w) = (b.X * ofB, b.Y * ofB, b.Z * ofB, b.W * ofB);
        x = Lanes.FusedMultiplyAdd(a.X, ofA, x);
        y = Lanes.FusedMultiplyAdd(a.Y, ofA, y);
        z = Lanes.FusedMultiplyAdd(a.Z, ofA, z);
        w = Lanes.FusedMultiplyAdd(a.W, ofA, w);
        return new() { X = x, Y = y, Z = z, W = w };
    }

    /// <summary>The rotation whose frame has these axes, right-handed, of length one and across each other.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn FromAxes(in WideVector x, in WideVector y, in WideVector z) => FromAxes(x, y, z, out var squared).OfLength(squared);

    /// <summary>The same, longer than one (Shepperd 1978: four times the quaternion times a large component of it, which is no division).</summary>
    /// <param name="x">The first axis.</param>
    /// <param name="y">The second.</param>
    /// <param name="z">The third.</param>
    /// <param name="squared">The square of its length.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn FromAxes(in WideVector x, in WideVector y, in WideVector z, out Lane squared)
    {
        var one = Lanes.Create(1f);
        var (xy, xz, yz) = (x.Y + y.X, z.X + x.Z, y.Z + z.Y);
        var (ofX, ofY, ofZ) = (y.Z - z.Y, z.X - x.Z, x.Y - y.X);
        var isBelow = Lanes.LessThan(z.Z, Lanes.Create(0f));
        var isX = Lanes.LessThan(y.Y, x.X);
        var isZ = Lanes.LessThan(x.X, -y.Y);
        var below = Choose(isX, new(one + x.X - y.Y - z.Z, xy, xz, ofX), new(xy, one - x.X + y.Y - z.Z, yz, ofY));
        var above = Choose(isZ, new(xz, yz, one - x.X - y.Y + z.Z, ofZ), new(ofX, ofY, ofZ, one + x.X + y.Y + z.Z));
        var large = Lanes.ConditionalSelect(isBelow, Lanes.ConditionalSelect(isX, below.X, below.Y), Lanes.ConditionalSelect(isZ, above.Z, above.W));
        squared = large * Lanes.Create(4f);
        return Choose(isBelow, below, above);
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
    public readonly WideVector Log()
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
    private readonly WideTurn Times(Lane factor) => new() { X = X * factor, Y = Y * factor, Z = Z * factor, W = W * factor };
}
