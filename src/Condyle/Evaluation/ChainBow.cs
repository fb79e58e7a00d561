namespace Condyle.Evaluation;

/// <summary>Bows a chain evenly in the plane of its bend, or straightens it, to bring its ends nearer to each other or further apart.</summary>
/// <param name="lengths">The bones' lengths.</param>
/// <param name="plane">The plane towards the goal.</param>
internal sealed class ChainBow(IReadOnlyList<double> lengths, BendPlane plane)
{
    /// <summary>Halvings of the interval in which the bow is looked for.</summary>
    public const int Halvings = 32;

    /// <summary>The least bow that is tried, as a share of the greatest; doubled, it comes to one.</summary>
    public const double FirstTry = 1.0 / 4096;

    private readonly double length = lengths.Sum();

    /// <summary>
    /// The angle by which to bow a chain that is to begin with its ends at another distance: about half of what a straight chain needs for it, which is four times
    /// the arc cosine of the share of its length with two equal bones; and less the nearer the chain is to being folded, so that it isn't bowed past itself.
    /// </summary>
    public double AngleFor(double distance, double atRest)
    {
        var inner = Math.Min(Math.Max(0, (2 * lengths.Max()) - length), atRest);
        var openness = length > inner ? Math.Min(1, (atRest - inner) / (length - inner)) : 0;
        return 2 * openness * (Turn(distance / length) - Turn(atRest / length));
    }

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
    /// <remarks>
    /// Too far apart, they are bowed; too near to each other, all bones lean towards the line between the ends, or, where one of them points back along it, are bowed the other way.
    /// How much is found by doubling the least try until it is too much, and by halving from there: a folding chain comes apart again where it is bowed too far.
    /// </remarks>
    public void Close(Vector3d[] bones, double distance)
    {
        var line = Tip(bones).Direction ?? plane.Line;
        if (Tip(bones).Length >= distance)
            Change(bones, distance, by => Bowed(bones, by * Math.PI));
        else if (bones.All(bone => Vector3d.Dot(bone, line) >= 0) || !Change(bones, distance, by => Bowed(bones, -by * Math.PI)))
            Change(bones, distance, by => Straightened(bones, line, by));
    }

    /// <summary>Changes bones by as much as brings their ends to a distance; false where no change does.</summary>
    private bool Change(Vector3d[] bones, double distance, Func<double, Vector3d[]> by)
    {
        var isShort = Tip(bones).Length < distance;
        bool IsStill(double much) => (Tip(by(much)).Length < distance) == isShort;
        var (from, to) = (0.0, FirstTry);
        for (; IsStill(to); to *= 2)
        {
            if (to >= 1)
                return false;
            from = to;
        }

        for (var i = 0; i < Halvings; i++)
        {
            var middle = (from + to) / 2;
            if (IsStill(middle))
                from = middle;
            else
                to = middle;
        }

        var changed = by((from + to) / 2);
        var swing = Quaterniond.Between(Tip(changed).Direction ?? plane.Line, plane.Line, plane.Normal);
        for (var i = 0; i < bones.Length; i++)
            bones[i] = swing.Rotate(changed[i]);
        return true;
    }

    private static double Turn(double share) => Math.Atan2(Math.Sqrt(Math.Max(0, (1 - share) * (1 + share))), Math.Min(share, 1));

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
