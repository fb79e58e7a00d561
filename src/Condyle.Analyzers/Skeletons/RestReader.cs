using System.Numerics;

namespace Condyle.Analyzers.Skeletons;

/// <summary>A node's local rest, whichever way the file gives it. The running program reads it the same way.</summary>
internal static class RestReader
{
    /// <summary>The standard's validator allows a rotation this much, for rotations stored in eight bits.</summary>
    private const double LengthTolerance = 0.00769;

    /// <summary>How far from perpendicular the axes of a matrix may be (the cosine between them): numbers rounded to three decimals pass, shear doesn't.</summary>
    private const double ShearTolerance = 2e-3;

    /// <summary>A float's rounding.</summary>
    private const double Rounding = 1e-6;

    private const string AsParts = "Give the node as translation, rotation and scale";

    /// <exception cref="SkeletonFileException">No translation, rotation and scale can say what the file says.</exception>
    public static JointRest Read(JsonPlace node)
    {
        var (translation, rotation, scale) = (node.Find("translation"), node.Find("rotation"), node.Find("scale"));
        if (node.Find("matrix") is { } matrix)
        {
            if (translation is not null || rotation is not null || scale is not null)
                throw matrix.Wrong("stands beside a translation, rotation or scale", "Keep one of the two");
            return Decompose(matrix);
        }

        return new JointRest(
            translation?.Numbers(3) is { } t ? Vector(t, 0) : Vector3.Zero,
            rotation is { } turned ? Rotation(turned) : Quaternion.Identity,
            scale?.Numbers(3) is { } s ? Vector(s, 0) : Vector3.One);
    }

    private static Quaternion Rotation(JsonPlace place)
    {
        var q = place.Numbers(4);
        var length = Math.Sqrt(q.Sum(static x => x * x));
        if (length == 0)
            throw place.Wrong("is a zero quaternion, which turns nowhere", "Write [0, 0, 0, 1] for no rotation");
        if (Math.Abs(length - 1) > LengthTolerance)
            throw place.Wrong(FormattableString.Invariant($"is a quaternion of length {length:0.####}, not 1"), "Normalise it");
        return Normalised(q);
    }

    private static JointRest Decompose(JsonPlace place)
    {
        var m = place.Numbers(16);
        if (Math.Max(Math.Max(Math.Abs(m[3]), Math.Abs(m[7])), Math.Max(Math.Abs(m[11]), Math.Abs(m[15] - 1))) > Rounding)
            throw place.Wrong("is no affine matrix: its last row isn't 0 0 0 1", AsParts);

        // One axis after the other, as the columns of the matrix.
        double[][] axes = [[m[0], m[1], m[2]], [m[4], m[5], m[6]], [m[8], m[9], m[10]]];
        double[] scale = [.. axes.Select(static axis => Math.Sqrt(Dot(axis, axis)))];
        if (scale.Min() <= 1e-9 * scale.Max())
            throw place.Wrong("flattens an axis to nothing, so its rotation is lost", AsParts);
        for (var i = 0; i < 3; i++)
            axes[i] = [.. axes[i].Select(x => x / scale[i])];
        if (Math.Abs(Dot(axes[0], axes[1])) > ShearTolerance || Math.Abs(Dot(axes[1], axes[2])) > ShearTolerance || Math.Abs(Dot(axes[2], axes[0])) > ShearTolerance)
            throw place.Wrong("is sheared, which no translation, rotation and scale can say", "Take the shear out where the file was made");

        // A mirrored matrix keeps its mirroring in the sign of one scale.
        if (Dot(Cross(axes[0], axes[1]), axes[2]) < 0)
        {
            scale[0] = -scale[0];
            axes[0] = [.. axes[0].Select(static x => -x)];
        }

        return new JointRest(Vector(m, 12), Normalised(QuaternionOf(axes)), Vector(scale, 0));
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

    private static Quaternion Normalised(double[] q)
    {
        var length = Math.Sqrt(q.Sum(static x => x * x));
        return new Quaternion((float)(q[0] / length), (float)(q[1] / length), (float)(q[2] / length), (float)(q[3] / length));
    }

    private static Vector3 Vector(double[] numbers, int start) => new((float)numbers[start], (float)numbers[start + 1], (float)numbers[start + 2]);

    private static double Dot(double[] a, double[] b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

    private static double[] Cross(double[] a, double[] b) => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}
