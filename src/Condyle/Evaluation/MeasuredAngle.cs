using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>
/// A measured angle: the node's rotation channel from rest, q = rest⁻¹ · rotation, split into a turn about one of the node's axes a and a turn across it
/// (the swing-twist decomposition; Dobrowolski 2015, "Swing-twist decomposition in Clifford algebra"). The turn about the axis is
/// 2·atan2(q.xyz · a, q.w), in degrees above −180 and up to 180; q and −q, the same rotation, give the same angle.
/// </summary>
/// <remarks>
/// Not continuous at 180 degrees, where it jumps to −180, nor where the turn across the axis is a half turn, which leaves no turn about it: there it is 180.
/// A drive by matrix leaves channels alone, so it isn't measured.
/// </remarks>
internal static class MeasuredAngle
{
    public static double Of(RigMeasure measure, PoseFrames frames)
    {
        var (node, axis) = (NodeOf(measure), AxisOf(measure));
        return About(axis, RestPose.ChannelsOf(node).Rotation.Inverse * frames.MeasuredChannelsOf(node).Rotation);
    }

    /// <summary>How much of a turn goes about an axis, in degrees.</summary>
    public static double About(Axis axis, Quaterniond turn) => SwingTwist.Angle(turn, Vector3d.Unit(axis)) is { } angle ? angle * (180 / Math.PI) : 180;

    public static RigNode NodeOf(RigMeasure measure) => measure.Node ?? throw new RigGeometryException($"The node of {measure.Title} isn't known.");

    public static Axis AxisOf(RigMeasure measure) => Facts.Known(measure.Axis, $"The axis of {measure.Title}")
        ?? throw new RigGeometryException($"About which axis {measure.Title} is measured isn't said: finish it with .About(...).");
}
