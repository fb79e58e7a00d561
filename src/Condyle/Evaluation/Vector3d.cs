using System.Numerics;
using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>A point or a direction in double precision.</summary>
internal readonly record struct Vector3d(double X, double Y, double Z)
{
    /// <summary>Shorter than this, a vector has no direction.</summary>
    public const double Tiny = 1e-150;

    public static Vector3d Zero => default;

    public static Vector3d One => new(1, 1, 1);

    public static Vector3d UnitX => new(1, 0, 0);

    public static Vector3d UnitY => new(0, 1, 0);

    public static Vector3d UnitZ => new(0, 0, 1);

    public static Vector3d Unit(Axis axis) => axis switch { Axis.X => UnitX, Axis.Y => UnitY, _ => UnitZ };

    public double Length => Math.Sqrt(Dot(this, this));

    /// <summary>The same direction with length one; none where there is no direction.</summary>
    public Vector3d? Direction => Length is > Tiny and var length ? this / length : null;

    public static Vector3d operator +(Vector3d a, Vector3d b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Vector3d operator -(Vector3d a, Vector3d b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static Vector3d operator -(Vector3d a) => new(-a.X, -a.Y, -a.Z);

    public static Vector3d operator *(Vector3d a, double factor) => new(a.X * factor, a.Y * factor, a.Z * factor);

    public static Vector3d operator /(Vector3d a, double divisor) => new(a.X / divisor, a.Y / divisor, a.Z / divisor);

    public static double Dot(Vector3d a, Vector3d b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);

    public static Vector3d Cross(Vector3d a, Vector3d b) =>
        new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));

    public static Vector3d Lerp(Vector3d a, Vector3d b, double t) => a + ((b - a) * t);

    /// <summary>What is left of this vector across a direction of length one.</summary>
    public Vector3d Across(Vector3d direction) => this - (direction * Dot(this, direction));

    /// <summary>A direction across this one, always the same for the same vector: away from the axis that it follows least.</summary>
    public Vector3d AnyAcross()
    {
        var least = Math.Abs(X) <= Math.Abs(Y) && Math.Abs(X) <= Math.Abs(Z) ? UnitX : Math.Abs(Y) <= Math.Abs(Z) ? UnitY : UnitZ;
        return Direction is { } direction ? least.Across(direction).Direction!.Value : UnitX;
    }

    public static implicit operator Vector3d(Vector3 v) => new(v.X, v.Y, v.Z);

    public Vector3 ToSingle() => new((float)X, (float)Y, (float)Z);

    public override string ToString() => $"({Invariant.Print(X)} {Invariant.Print(Y)} {Invariant.Print(Z)})";
}
