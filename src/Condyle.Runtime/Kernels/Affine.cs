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

    /// <summary>The lengths of the axes: X's and Y's with the signs of a known scale, Z's so that a mirrored frame stays mirrored.</summary>
    public Vector3 ScaleFor(Vector3 signs)
    {
        var mirrored = (Vector3.Dot(X, Vector3.Cross(Y, Z)) < 0) ^ (signs.X < 0) ^ (signs.Y < 0);
        return new(signs.X < 0 ? -X.Length() : X.Length(), signs.Y < 0 ? -Y.Length() : Y.Length(), mirrored ? -Z.Length() : Z.Length());
    }

    /// <summary>This frame as it is seen in another one: outer⁻¹ · this. A flat frame, which has no inverse, counts without its scale and shear.</summary>
    public Affine In(in Affine outer)
    {
        var (x, y, z) = (outer.X.Length(), outer.Y.Length(), outer.Z.Length());
        if (x < Rotation.Tiny || y < Rotation.Tiny || z < Rotation.Tiny)
            return InRigid(outer);
        var (ux, uy, uz) = (outer.X / x, outer.Y / y, outer.Z / z);
        var across = Vector3.Cross(uy, uz);
        var volume = Vector3.Dot(ux, across);
        if (MathF.Abs(volume) < Rotation.Flat)
            return InRigid(outer);

        // The rows of the inverse are the cross products of the axes over the volume that they span.
        var rowX = across / (volume * x);
        var rowY = Vector3.Cross(uz, ux) / (volume * y);
        var rowZ = Vector3.Cross(ux, uy) / (volume * z);
        return Seen(this, outer.Origin, rowX, rowY, rowZ);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector3 Direction(Vector3 local) => (X * local.X) + (Y * local.Y) + (Z * local.Z);

    private Affine InRigid(in Affine outer)
    {
        var rigid = Rigid.Of(outer).ToAffine();
        return Seen(this, outer.Origin, rigid.X, rigid.Y, rigid.Z);
    }

    // The origins are subtracted before anything else, so that far from the world's origin no digits are lost.
    private static Affine Seen(in Affine frame, Vector3 from, Vector3 rowX, Vector3 rowY, Vector3 rowZ)
    {
        var move = frame.Origin - from;
        return new(
            new Vector3(Vector3.Dot(rowX, frame.X), Vector3.Dot(rowY, frame.X), Vector3.Dot(rowZ, frame.X)),
            new Vector3(Vector3.Dot(rowX, frame.Y), Vector3.Dot(rowY, frame.Y), Vector3.Dot(rowZ, frame.Y)),
            new Vector3(Vector3.Dot(rowX, frame.Z), Vector3.Dot(rowY, frame.Z), Vector3.Dot(rowZ, frame.Z)),
            new Vector3(Vector3.Dot(rowX, move), Vector3.Dot(rowY, move), Vector3.Dot(rowZ, move)));
    }
}
