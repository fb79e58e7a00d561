using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>The plane in which a chain bends: the line from root to tip, the side to which it bends, and the normal, each of length one and across the others.</summary>
internal readonly struct Plane
{
    private Plane(Vector3 line, Vector3 normal)
    {
        Line = line;
        Normal = normal;
        Side = Vector3.Cross(normal, line);
    }

    public Vector3 Line { get; }

    public Vector3 Side { get; }

    public Vector3 Normal { get; }

    public Quaternion Frame => Rotation.FromAxes(Line, Side, Normal);

    /// <summary>The plane through a line and a direction beside it; some plane, always the same, where they are no two directions.</summary>
    public static Plane Spanned(Vector3 line, Vector3 beside)
    {
        if (!Rotation.TryDirection(line, out var along))
            along = Vector3.UnitY;
        return new(along, Rotation.TryDirection(Vector3.Cross(along, beside), out var normal) ? normal : Rotation.AnyAcross(along));
    }

    /// <summary>
    /// The plane towards a goal. Its bend faces the pole; without one, or with the pole nearer to the line than <paramref name="near"/>,
    /// the bend is carried along by the smallest turn of the line. A goal nearer than that leaves the line as it is.
    /// </summary>
    public Plane Carried(Vector3 toGoal, Vector3 toPole, float near)
    {
        var line = toGoal.Length() > near && Rotation.TryDirection(toGoal, out var direction) ? direction : Line;
        var towardsPole = Rotation.Across(toPole, line);
        return towardsPole.Length() > near
            ? Spanned(line, towardsPole)
            : Spanned(line, Vector3.Transform(Side, Rotation.Between(Line, line, Normal)));
    }

    /// <summary>The plane turned about its line.</summary>
    public Plane Turned(float radians)
    {
        var (sine, cosine) = MathF.SinCos(radians);
        return new(Line, (Normal * cosine) - (Side * sine));
    }

    /// <summary>The rotation of a frame whose first axis is a bone, the line where it has no length, and whose second is nearest the normal.</summary>
    public Quaternion Bone(Vector3 bone)
    {
        if (!Rotation.TryDirection(bone, out var along))
            along = Line;
        if (!Rotation.TryDirection(Rotation.Across(Normal, along), out var across))
            across = Rotation.AnyAcross(along);
        return Rotation.FromAxes(along, across, Vector3.Cross(along, across));
    }
}
