using System.Numerics;
using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>A rotation in double precision; <c>a * b</c> applies b first, as in <see cref="Quaternion"/>.</summary>
internal readonly record struct Quaterniond(double X, double Y, double Z, double W)
{
    public static Quaterniond Identity => new(0, 0, 0, 1);

    public double Length => Math.Sqrt(Dot(this, this));

    /// <summary>The rotation backwards; right for unit quaternions.</summary>
    public Quaterniond Inverse => new(-X, -Y, -Z, W);

    public Vector3d Vector => new(X, Y, Z);

    /// <summary>Where it turns the axes: what <see cref="Rotate"/> makes of each.</summary>
    public (Vector3d X, Vector3d Y, Vector3d Z) Axes
    {
        get
        {
            var (x, y, z) = (2 * X, 2 * Y, 2 * Z);
            return (
                new(1 - (y * Y) - (z * Z), (x * Y) + (z * W), (x * Z) - (y * W)),
                new((x * Y) - (z * W), 1 - (x * X) - (z * Z), (y * Z) + (x * W)),
                new((x * Z) + (y * W), (y * Z) - (x * W), 1 - (x * X) - (y * Y)));
        }
    }

    public static Quaterniond operator *(Quaterniond a, Quaterniond b) => new(
        (a.W * b.X) + (a.X * b.W) + (a.Y * b.Z) - (a.Z * b.Y),
        (a.W * b.Y) - (a.X * b.Z) + (a.Y * b.W) + (a.Z * b.X),
        (a.W * b.Z) + (a.X * b.Y) - (a.Y * b.X) + (a.Z * b.W),
        (a.W * b.W) - (a.X * b.X) - (a.Y * b.Y) - (a.Z * b.Z));

    public static Quaterniond operator *(Quaterniond a, double factor) => new(a.X * factor, a.Y * factor, a.Z * factor, a.W * factor);

    public static Quaterniond operator +(Quaterniond a, Quaterniond b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z, a.W + b.W);

    public static Quaterniond operator -(Quaterniond a, Quaterniond b) => a + -b;

    public static Quaterniond operator -(Quaterniond a) => a * -1;

    public static double Dot(Quaterniond a, Quaterniond b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z) + (a.W * b.W);

    /// <summary>With length one; the zero quaternion, which says nothing, becomes no rotation.</summary>
    public Quaterniond Normalized() => Length is > Vector3d.Tiny and var length ? this * (1 / length) : Identity;

    public Vector3d Rotate(Vector3d v)
    {
        var t = Vector3d.Cross(Vector, v) * 2;
        return v + (t * W) + Vector3d.Cross(Vector, t);
    }

    /// <summary>A right-handed turn about an axis of length one.</summary>
    public static Quaterniond About(Vector3d axis, double radians)
    {
        var v = axis * Math.Sin(radians / 2);
        return new Quaterniond(v.X, v.Y, v.Z, Math.Cos(radians / 2));
    }

    /// <summary>
    /// The smallest turn that brings one direction onto another. Not continuous where they are opposite:
    /// there it is the half turn about <paramref name="axisWhenOpposite"/>.
    /// </summary>
    public static Quaterniond Between(Vector3d from, Vector3d to, Vector3d axisWhenOpposite)
    {
        // Half-angle form: the sum of two unit vectors points halfway between them.
        if ((from + to).Direction is not { } half || (from + to).Length < 1e-12)
            return About(axisWhenOpposite, Math.PI);
        var v = Vector3d.Cross(from, half);
        return new Quaterniond(v.X, v.Y, v.Z, Vector3d.Dot(from, half)).Normalized();
    }

    /// <summary>The rotation whose frame has these axes, which are right-handed, of length one and across each other.</summary>
    /// <remarks>The largest component is worked out first, so that nothing is divided by a small number (Shepperd 1978).</remarks>
    public static Quaterniond FromAxes(Vector3d x, Vector3d y, Vector3d z)
    {
        var trace = x.X + y.Y + z.Z;
        Quaterniond q;
        if (trace >= Math.Max(x.X, Math.Max(y.Y, z.Z)))
            q = new(y.Z - z.Y, z.X - x.Z, x.Y - y.X, 1 + trace);
        else if (x.X >= y.Y && x.X >= z.Z)
            q = new(1 + x.X - y.Y - z.Z, x.Y + y.X, z.X + x.Z, y.Z - z.Y);
        else if (y.Y >= z.Z)
            q = new(x.Y + y.X, 1 + y.Y - x.X - z.Z, y.Z + z.Y, z.X - x.Z);
        else
            q = new(z.X + x.Z, y.Z + z.Y, 1 + z.Z - x.X - y.Y, x.Y - y.X);
        return q.Normalized();
    }

    /// <summary>How far apart two rotations are, in radians from 0 to π.</summary>
    public static double Angle(Quaterniond a, Quaterniond b)
    {
        var between = a.Inverse * b;
        return 2 * Math.Atan2(between.Vector.Length, Math.Abs(between.W));
    }

    public static implicit operator Quaterniond(Quaternion q) => new(q.X, q.Y, q.Z, q.W);

    public Quaternion ToSingle() => new((float)X, (float)Y, (float)Z, (float)W);

    public override string ToString() => $"({Invariant.Print(X)} {Invariant.Print(Y)} {Invariant.Print(Z)} {Invariant.Print(W)})";
}
