namespace Condyle.Evaluation;

/// <summary>The plane in which a chain bends: the line from root to tip and the side to which it bends, each of length one and across the other.</summary>
internal readonly record struct BendPlane(Vector3d Line, Vector3d Side)
{
    /// <summary>Nearer than this share of the bones' length, a goal is at the root and a pole on the line.</summary>
    public const double Near = 1e-6;

    public Vector3d Normal => Vector3d.Cross(Line, Side);

    public Quaterniond Frame => Quaterniond.FromAxes(Line, Side, Normal);

    /// <summary>The plane through a line and a direction beside it; some plane, always the same, where they are no two directions.</summary>
    public static BendPlane Spanned(Vector3d line, Vector3d beside)
    {
        var along = line.Direction ?? Vector3d.UnitY;
        return new(along, beside.Across(along).Direction ?? along.AnyAcross());
    }

    /// <summary>
    /// The plane towards a goal. Its bend faces the pole; without one, or with the pole nearer to the line than <paramref name="near"/>,
    /// the bend is carried along by the smallest turn of the line. A goal nearer than that leaves the line as it is.
    /// </summary>
    /// <remarks>Not continuous: with the pole on the line; with the goal at the root; without a pole, with the goal opposite to the line (half a turn about the normal is taken). The runtime takes a pole that a float of the places can't tell from the line as on it.</remarks>
    public BendPlane Towards(Vector3d toGoal, Vector3d? toPole, double near)
    {
        var line = toGoal.Length > near && toGoal.Direction is { } direction ? direction : Line;
        return toPole?.Across(line) is { } faced && faced.Length > near
            ? Spanned(line, faced)
            : Spanned(line, Quaterniond.Between(Line, line, Normal).Rotate(Side));
    }

    /// <summary>The plane turned about its line.</summary>
    public BendPlane Turned(double radians) => this with { Side = (Side * Math.Cos(radians)) + (Normal * Math.Sin(radians)) };

    /// <summary>The rotation of a frame whose first axis is a bone, the line where it has no length, and whose second is nearest the plane's normal.</summary>
    public Quaterniond Bone(Vector3d bone)
    {
        var along = bone.Direction ?? Line;
        var across = Normal.Across(along).Direction ?? along.AnyAcross();
        return Quaterniond.FromAxes(along, across, Vector3d.Cross(along, across));
    }
}
