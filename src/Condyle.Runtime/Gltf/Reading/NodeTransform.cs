using System.Numerics;

namespace Condyle.Runtime.Gltf.Reading;

/// <summary>A node's local translation, rotation (unit length) and scale, whichever way the file gives them. They are exact unless a rotation isn't quite of unit length or a matrix is rounded.</summary>
internal readonly record struct NodeTransform(Vector3 Translation, Quaternion Rotation, Vector3 Scale, bool IsExact)
{
    /// <summary>How far from perpendicular the axes of a matrix may be (the cosine between them): numbers rounded to three decimals pass, shear doesn't.</summary>
    private const double ShearTolerance = 2e-3;

    /// <summary>A float's rounding.</summary>
    private const double Rounding = 1e-6;

    /// <exception cref="BadInputException">The node's matrix is sheared or flattens an axis, so no translation, rotation and scale equals it.</exception>
    public static NodeTransform Of(JsonSpot node)
    {
        if (node["matrix"] is { Exists: true } matrix)
            return Decompose(matrix);
        double[] rotation = node["rotation"] is { Exists: true } given ? given.Numbers(4) : [0, 0, 0, 1];
        return new NodeTransform(
            Vector(node["translation"], Vector3.Zero),
            Normalised(rotation),
            Vector(node["scale"], Vector3.One),
            IsExact: Math.Abs(Math.Sqrt(rotation.Sum(x => x * x)) - 1) < Rounding);
    }

    private static Vector3 Vector(JsonSpot spot, Vector3 whenAbsent) => spot.Exists ? ToVector(spot.Numbers(3)) : whenAbsent;

    private static Vector3 ToVector(double[] xyz) => new((float)xyz[0], (float)xyz[1], (float)xyz[2]);

    private static Quaternion Normalised(double[] q)
    {
        var length = Math.Sqrt(q.Sum(x => x * x));
        return new Quaternion((float)(q[0] / length), (float)(q[1] / length), (float)(q[2] / length), (float)(q[3] / length));
    }

    private static NodeTransform Decompose(JsonSpot spot)
    {
        var m = spot.Numbers(16);
        if (Math.Max(Math.Max(Math.Abs(m[3]), Math.Abs(m[7])), Math.Max(Math.Abs(m[11]), Math.Abs(m[15] - 1))) > Rounding)
            throw spot.Wrong("is no affine matrix: its last row isn't 0 0 0 1", "Give the node as translation, rotation and scale");
        // One axis after the other, as the columns of the matrix.
        double[][] axes = [m[0..3], m[4..7], m[8..11]];
        var scale = Array.ConvertAll(axes, axis => Math.Sqrt(Dot(axis, axis)));
        if (scale.Min() <= 1e-9 * scale.Max() || scale.Max() == 0)
            throw spot.Wrong("flattens an axis to nothing, so its rotation is lost", "Give the node as translation, rotation and scale");
        for (var i = 0; i < 3; i++)
        {
            for (var row = 0; row < 3; row++)
                axes[i][row] /= scale[i];
        }
        var shear = Math.Max(Math.Abs(Dot(axes[0], axes[1])), Math.Max(Math.Abs(Dot(axes[1], axes[2])), Math.Abs(Dot(axes[2], axes[0]))));
        if (shear > ShearTolerance)
            throw spot.Wrong("is sheared, which no translation, rotation and scale can say", "Take the shear out where the file was made");
        if (Dot(Cross(axes[0], axes[1]), axes[2]) < 0)
        {
            scale[0] = -scale[0];
            axes[0] = Array.ConvertAll(axes[0], x => -x);
        }
        return new NodeTransform(ToVector(m[12..15]), Normalised(QuaternionOf(axes)), ToVector(scale), IsExact: shear < Rounding);
    }

    /// <summary>From a rotation's columns to x, y, z, w, by the largest of the four so that nothing small is divided by (Shepperd 1978).</summary>
    private static double[] QuaternionOf(double[][] axes)
    {
        var (xx, yy, zz) = (axes[0][0], axes[1][1], axes[2][2]);
        double[] squares = [1 + xx - yy - zz, 1 - xx + yy - zz, 1 - xx - yy + zz, 1 + xx + yy + zz];
        var (xy, yz, zx) = (axes[0][1] + axes[1][0], axes[1][2] + axes[2][1], axes[2][0] + axes[0][2]);
        var (wx, wy, wz) = (axes[1][2] - axes[2][1], axes[2][0] - axes[0][2], axes[0][1] - axes[1][0]);
        return Array.IndexOf(squares, squares.Max()) switch
        {
            0 => [squares[0], xy, zx, wx],
            1 => [xy, squares[1], yz, wy],
            2 => [zx, yz, squares[2], wz],
            _ => [wx, wy, wz, squares[3]],
        };
    }

    private static double Dot(double[] a, double[] b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

    private static double[] Cross(double[] a, double[] b) => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}
