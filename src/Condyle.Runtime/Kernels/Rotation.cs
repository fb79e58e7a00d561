using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>Rotations from frames and from directions.</summary>
internal static class Rotation
{
    /// <summary>Shorter than this, a vector has no direction: its square would leave a float's range.</summary>
    public const float Tiny = 1e-15f;

    /// <summary>Directions that span less than this are not told apart from dependent ones.</summary>
    public const float Flat = 1e-6f;

    /// <summary>The same direction with length one; false where there is no direction.</summary>
    public static bool TryDirection(Vector3 vector, out Vector3 direction)
    {
        var length = vector.Length();
        direction = length > Tiny ? vector / length : Vector3.Zero;
        return length > Tiny;
    }

    /// <summary>What is left of a vector across a direction of length one.</summary>
    public static Vector3 Across(Vector3 vector, Vector3 direction) => vector - (direction * Vector3.Dot(vector, direction));

    /// <summary>A direction across a vector, always the same for the same one: away from the axis that it follows least.</summary>
    public static Vector3 AnyAcross(Vector3 vector)
    {
        var size = Vector3.Abs(vector);
        var least = size.X <= size.Y && size.X <= size.Z ? Vector3.UnitX : size.Y <= size.Z ? Vector3.UnitY : Vector3.UnitZ;
        return TryDirection(vector, out var direction) ? Vector3.Normalize(Across(least, direction)) : Vector3.UnitX;
    }

    /// <summary>
    /// The rotation of a frame whose scale has these signs. Its axes are made orthonormal in the order X, Y, Z (Gram and Schmidt) and Z is X × Y,
    /// so shear is dropped from Y and Z and a mirrored frame loses its mirroring on Z.
    /// </summary>
    public static Quaternion Of(in Affine frame, Vector3 scale)
    {
        var first = scale.X < 0 ? -frame.X : frame.X;
        var second = scale.Y < 0 ? -frame.Y : frame.Y;
        var third = scale.Z < 0 ? -frame.Z : frame.Z;
        if (!TryDirection(first, out var x) && !TryDirection(Vector3.Cross(second, third), out x))
            x = AnyAcross(second);
        if (!TryIndependent(second, x, out var y) && !TryIndependent(Vector3.Cross(third, x), x, out y))
            y = AnyAcross(x);
        return FromAxes(x, y, Vector3.Cross(x, y));
    }

    /// <summary>The rotation whose frame has these axes, right-handed, of length one and across each other (Shepperd 1978: the largest component first).</summary>
    public static Quaternion FromAxes(Vector3 x, Vector3 y, Vector3 z)
    {
        var trace = x.X + y.Y + z.Z;
        Quaternion q;
        if (trace >= MathF.Max(x.X, MathF.Max(y.Y, z.Z)))
            q = new(y.Z - z.Y, z.X - x.Z, x.Y - y.X, 1 + trace);
        else if (x.X >= y.Y && x.X >= z.Z)
            q = new(1 + x.X - y.Y - z.Z, x.Y + y.X, z.X + x.Z, y.Z - z.Y);
        else if (y.Y >= z.Z)
            q = new(x.Y + y.X, 1 + y.Y - x.X - z.Z, y.Z + z.Y, z.X - x.Z);
        else
            q = new(z.X + x.Z, y.Z + z.Y, 1 + z.Z - x.X - y.Y, x.Y - y.X);
        return Quaternion.Normalize(q);
    }

    private static bool TryIndependent(Vector3 axis, Vector3 first, out Vector3 direction)
    {
        direction = default;
        return TryDirection(axis, out var unit)
            && Across(unit, first) is var across
            && across.Length() > Flat
            && TryDirection(across, out direction);
    }
}
