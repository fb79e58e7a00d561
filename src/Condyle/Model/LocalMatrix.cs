using System.Numerics;

namespace Condyle.Model;

/// <summary>A node's local matrix taken apart into translation, rotation and scale, or why that can't be done. The generator and the program read files through it, so that both agree.</summary>
/// <param name="Transform">The parts.</param>
/// <param name="Problem">What is wrong with the matrix; none when the parts say it.</param>
/// <param name="Remedy">What to do about it.</param>
/// <param name="IsExact">Whether the parts give the matrix back to within a float's rounding.</param>
internal sealed record LocalMatrix(RestTransform Transform, string? Problem, string Remedy, bool IsExact)
{
    /// <summary>How far from perpendicular the axes may be (the cosine between them): numbers rounded to three decimals pass, shear doesn't.</summary>
    private const double ShearTolerance = 2e-3;

    /// <summary>A float's rounding.</summary>
    private const double Rounding = 1e-6;

    private const string AsParts = "Give the node as translation, rotation and scale";

    /// <summary>Takes a matrix apart.</summary>
    /// <param name="m">Sixteen numbers, column after column, as glTF has them.</param>
    public static LocalMatrix Of(double[] m)
    {
        if (Math.Max(Math.Max(Math.Abs(m[3]), Math.Abs(m[7])), Math.Max(Math.Abs(m[11]), Math.Abs(m[15] - 1))) > Rounding)
            return Refused("is no affine matrix: its last row isn't 0 0 0 1", AsParts);

        // One axis after the other, as the columns of the matrix.
        double[][] axes = [[m[0], m[1], m[2]], [m[4], m[5], m[6]], [m[8], m[9], m[10]]];
        double[] scale = [.. axes.Select(static axis => Math.Sqrt(Dot(axis, axis)))];
        if (scale.Min() <= 1e-9 * scale.Max())
            return Refused("flattens an axis to nothing, so its rotation is lost", AsParts);
        for (var i = 0; i < 3; i++)
            axes[i] = [.. axes[i].Select(x => x / scale[i])];
        var shear = Math.Max(Math.Abs(Dot(axes[0], axes[1])), Math.Max(Math.Abs(Dot(axes[1], axes[2])), Math.Abs(Dot(axes[2], axes[0]))));
        if (shear > ShearTolerance)
            return Refused("is sheared, which no translation, rotation and scale can say", "Take the shear out where the file was made");

        // A mirrored matrix keeps its mirroring in the sign of one scale.
        if (Dot(Cross(axes[0], axes[1]), axes[2]) < 0)
        {
            scale[0] = -scale[0];
            axes[0] = [.. axes[0].Select(static x => -x)];
        }

        return new LocalMatrix(new RestTransform(Vector(m[12], m[13], m[14]), Normalised(QuaternionOf(axes)), Vector(scale[0], scale[1], scale[2])), null, "", shear < Rounding);
    }

    /// <summary>The unit quaternion of x, y, z, w, of any length above zero.</summary>
    public static Quaternion Normalised(double[] q)
    {
        var length = Math.Sqrt(q.Sum(static x => x * x));
        return new Quaternion((float)(q[0] / length), (float)(q[1] / length), (float)(q[2] / length), (float)(q[3] / length));
    }

    private static LocalMatrix Refused(string problem, string remedy) => new(RestTransform.Identity, problem, remedy, false);

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

    private static Vector3 Vector(double x, double y, double z) => new((float)x, (float)y, (float)z);

    private static double Dot(double[] a, double[] b) => (a[0] * b[0]) + (a[1] * b[1]) + (a[2] * b[2]);

    private static double[] Cross(double[] a, double[] b) => [(a[1] * b[2]) - (a[2] * b[1]), (a[2] * b[0]) - (a[0] * b[2]), (a[0] * b[1]) - (a[1] * b[0])];
}
