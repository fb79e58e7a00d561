namespace Condyle.Evaluation;

/// <summary>One of the six directions along a frame's own axes, for instance −Y.</summary>
internal readonly record struct LocalAxis(Axis Axis, bool IsNegative)
{
    /// <summary>An axis is clear when the direction lies within 20° of it.</summary>
    public static readonly double Clear = Math.Cos(20 * Math.PI / 180);

    /// <summary>The axis of a frame along which a world direction lies; none where it lies between axes.</summary>
    public static LocalAxis? Along(Vector3d? direction, Affine3d frame)
    {
        if (direction?.Direction is not { } unit)
            return null;
        var local = frame.Rotation.Inverse.Rotate(unit);
        return Math.Abs(local.X) >= Clear ? new LocalAxis(Axis.X, local.X < 0)
            : Math.Abs(local.Y) >= Clear ? new LocalAxis(Axis.Y, local.Y < 0)
            : Math.Abs(local.Z) >= Clear ? new LocalAxis(Axis.Z, local.Z < 0)
            : null;
    }

    public override string ToString() => (IsNegative ? "−" : "+") + Axis;
}
