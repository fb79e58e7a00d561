namespace Condyle.Evaluation;

/// <summary>Bows a chain evenly in the plane of its bend, or straightens it, to bring its ends nearer to each other or further apart.</summary>
/// <param name="lengths">The bones' lengths.</param>
/// <param name="plane">The plane towards the goal.</param>
internal sealed class ChainBow(IReadOnlyList<double> lengths, BendPlane plane)
{
    /// <summary>Halvings of the interval in which the bow is looked for.</summary>
    public const int Halvings = 32;

    private readonly double length = lengths.Sum();

    /// <summary>The angle by which a straight chain is to be bowed so that its ends are this share of its length apart: exact for two equal bones, a little much for more.</summary>
    public static double AngleFor(double share) => 2 * Math.Atan2(Math.Sqrt(Math.Max(0, (1 - share) * (1 + share))), share);

    /// <summary>The bones bowed further: from the first to the last they turn by an angle in all, half of it at the first, towards the side of the bend.</summary>
    public Vector3d[] Bowed(IReadOnlyList<Vector3d> bones, double angle)
    {
        var bowed = new Vector3d[bones.Count];
        var before = 0.0;
        for (var i = 0; i < bowed.Length; i++)
        {
            var middle = (before + (lengths[i] / 2)) / length;
            bowed[i] = Quaterniond.About(plane.Normal, angle * (0.5 - middle)).Rotate(bones[i]);
            before += lengths[i];
        }

        return bowed;
    }

    /// <summary>Brings the ends of bones to a distance that they nearly have, and into the plane's line.</summary>
    /// <remarks>Too near to each other, all bones lean towards the line between the ends; too far apart, they are bowed. Both are found by halving, which ends within 2⁻³² of the interval.</remarks>
    public void Close(Vector3d[] bones, double distance)
    {
        var line = Tip(bones).Direction ?? plane.Line;
        var isShort = Tip(bones).Length < distance;
        Vector3d[] Changed(double by) => isShort ? Straightened(bones, line, by) : Bowed(bones, by * Math.PI);
        var (from, to) = (0.0, 1.0);
        if ((Tip(Changed(to)).Length < distance) == isShort)
            return; // no bow has that distance
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (from + to) / 2;
            if ((Tip(Changed(middle)).Length < distance) == isShort)
                from = middle;
            else
                to = middle;
        }

        var closed = Changed((from + to) / 2);
        var swing = Quaterniond.Between(Tip(closed).Direction ?? plane.Line, plane.Line, plane.Normal);
        for (var i = 0; i < bones.Length; i++)
            bones[i] = swing.Rotate(closed[i]);
    }

    private static Vector3d[] Straightened(Vector3d[] bones, Vector3d line, double by) =>
        [.. bones.Select(bone => ((bone * (1 - by)) + (line * by)).Direction ?? line)];

    private Vector3d Tip(IReadOnlyList<Vector3d> bones)
    {
        var tip = Vector3d.Zero;
        for (var i = 0; i < bones.Count; i++)
            tip += bones[i] * lengths[i];
        return tip;
    }
}
