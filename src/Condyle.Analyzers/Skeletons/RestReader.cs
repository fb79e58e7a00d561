using System.Numerics;
using Condyle.Model;

namespace Condyle.Analyzers.Skeletons;

/// <summary>A node's local rest, whichever way the file gives it. The running program reads it the same way.</summary>
internal static class RestReader
{
    /// <summary>The standard's validator allows a rotation this much, for rotations stored in eight bits.</summary>
    private const double LengthTolerance = 0.00769;

    /// <exception cref="SkeletonFileException">No translation, rotation and scale can say what the file says.</exception>
    public static JointRest Read(JsonPlace node)
    {
        var (translation, rotation, scale) = (node.Find("translation"), node.Find("rotation"), node.Find("scale"));
        if (node.Find("matrix") is { } matrix)
        {
            if (translation is not null || rotation is not null || scale is not null)
                throw matrix.Wrong("stands beside a translation, rotation or scale", "Keep one of the two");
            return FromMatrix(matrix);
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
        return LocalMatrix.Normalised(q);
    }

    private static JointRest FromMatrix(JsonPlace place)
    {
        var parts = LocalMatrix.Of(place.Numbers(16));
        if (parts.Problem is { } problem)
            throw place.Wrong(problem, parts.Remedy);
        return new JointRest(parts.Transform.Translation, parts.Transform.Rotation, parts.Transform.Scale);
    }

    private static Vector3 Vector(double[] numbers, int start) => new((float)numbers[start], (float)numbers[start + 1], (float)numbers[start + 2]);
}
