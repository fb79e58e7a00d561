using Condyle.Evaluation;

namespace Condyle.Runtime.Matching;

/// <summary>
/// The controls that a limb hangs under, as they stand before a match. What carries one of them may go by the limb's goal or by its switch, as a collar that follows does:
/// such a control takes up what it would be moved by, so that the limb's root stays where it is.
/// </summary>
internal sealed class LimbCarriers
{
    private readonly LivePose pose;
    private readonly List<(Handle Handle, Affine3d Frame)> carriers = [];

    public LimbCarriers(LimbPlan limb, LivePose pose)
    {
        this.pose = pose;
        for (var above = pose.Above(limb.Joints[0].Turner); above is not null; above = pose.Above(above))
            carriers.Insert(0, (above, FrameOf(above)));
    }

    /// <summary>Puts back what stands elsewhere by now, from the top down.</summary>
    /// <returns>Whether anything did.</returns>
    public bool Keep()
    {
        var moved = false;
        foreach (var (handle, frame) in carriers)
        {
            if (!IsOff(frame, FrameOf(handle)))
                continue;
            pose.Place(handle, frame);
            moved = true;
        }

        return moved;
    }

    private Affine3d FrameOf(Handle handle) => pose.Frames.WorldOf(handle.Node).Frame;

    private static bool IsOff(Affine3d before, Affine3d now) =>
        (now.Origin - before.Origin).Length > LimbMatch.AllowedMetres / 10
        || Quaterniond.Angle(now.Rotation, before.Rotation) * Compare.DegreesPerRadian > LimbMatch.AllowedDegrees / 10;
}
