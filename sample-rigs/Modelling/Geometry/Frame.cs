namespace Modelling.Geometry;

/// <summary>A place and three perpendicular unit axes in the world.</summary>
public sealed record Frame(Vec Origin, Vec X, Vec Y, Vec Z)
{
    /// <summary>A frame whose axes are the world's.</summary>
    public static Frame At(Vec origin) => new(origin, Vec.Left, Vec.Up, Vec.Front);

    /// <summary>A frame whose +Y runs along the bone and whose +Z is the side that the bone bends to, so that a positive turn about +X bends it.</summary>
    public static Frame Along(Vec origin, Vec bone, Vec bendsTo)
    {
        var y = bone.Unit;
        var x = y.Cross(bendsTo).Unit;
        return new Frame(origin, x, y, x.Cross(y));
    }

    /// <summary>
    /// The other side's frame: reflected in X = 0, then its X axis turned round to stay right-handed.
    /// +Y still runs along the bone, and the same turn about X is the mirrored pose; turns about Y and Z change their sign.
    /// </summary>
    public Frame Mirrored => new(Origin.Mirrored, -X.Mirrored, Y.Mirrored, Z.Mirrored);

    public Turn Turn => Turn.ToAxes(X, Y, Z);

    public Vec Out(Vec local) => Origin + Direction(local);

    public Vec Direction(Vec local) => X * local.X + Y * local.Y + Z * local.Z;

    public Vec Into(Vec world) => DirectionInto(world - Origin);

    public Vec DirectionInto(Vec world) => new(X.Dot(world), Y.Dot(world), Z.Dot(world));

    /// <summary>This frame as seen from another.</summary>
    public Frame In(Frame other) => new(other.Into(Origin), other.DirectionInto(X), other.DirectionInto(Y), other.DirectionInto(Z));
}
