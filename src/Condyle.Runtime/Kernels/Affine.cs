using System.Numerics;
using System.Runtime.CompilerServices;

namespace Condyle.Runtime.Kernels;

/// <summary>A frame that may carry scale and shear: three axes and an origin. A point p of it stands at X·p.X + Y·p.Y + Z·p.Z + Origin.</summary>
internal readonly struct Affine(Vector3 x, Vector3 y, Vector3 z, Vector3 origin)
{
    public readonly Vector3 X = x;
    public readonly Vector3 Y = y;
    public readonly Vector3 Z = z;
    public readonly Vector3 Origin = origin;

    public static Affine Identity => new(Vector3.UnitX, Vector3.UnitY, Vector3.UnitZ, Vector3.Zero);

    /// <summary>The frame that <paramref name="inner"/> is when it is given in <paramref name="outer"/>.</summary>
    public static Affine operator *(in Affine outer, in Affine inner) => new(
        outer.Direction(inner.X),
        outer.Direction(inner.Y),
        outer.Direction(inner.Z),
        outer.Direction(inner.Origin) + outer.Origin);

    /// <summary>Scale first, then the turn, then the move.</summary>
    public static Affine Of(Vector3 move, Quaternion turn, Vector3 scale)
    {
        var twice = new Vector3(turn.X, turn.Y, turn.Z) * 2;
        var (xx, yy, zz) = (turn.X * twice.X, turn.Y * twice.Y, turn.Z * twice.Z);
        var (xy, xz, yz) = (turn.X * twice.Y, turn.X * twice.Z, turn.Y * twice.Z);
        var (wx, wy, wz) = (turn.W * twice.X, turn.W * twice.Y, turn.W * twice.Z);
        return new(
            new Vector3(1 - yy - zz, xy + wz, xz - wy) * scale.X,
            new Vector3(xy - wz, 1 - xx - zz, yz + wx) * scale.Y,
            new Vector3(xz + wy, yz - wx, 1 - xx - yy) * scale.Z,
            move);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector3 Direction(Vector3 local) => (X * local.X) + (Y * local.Y) + (Z * local.Z);
}
