using Condyle.Evaluation;

namespace Condyle.Runtime.Matching;

/// <summary>Turns a limb's joints by their controls, from root to tip, so that the turned copy stands as the solved one.</summary>
/// <remarks>
/// channels = (world(parent) · placement)⁻¹ · wanted · (control⁻¹ · joint)⁻¹, each control after the one above it has its place, and less what responses put on top.
/// They are set for the moment after the switch: what carries the limb by then stands where it stood (<see cref="LimbCarriers"/>). Always possible where the controls' turns are unlocked, and their moves too if the solver stretches.
/// </remarks>
internal static class TurnMatch
{
    public static LimbMatch Make(LimbPlan limb, LivePose pose)
    {
        List<Affine3d> wanted = [.. limb.Joints.Select(joint => pose.Frames.WorldOf(joint.Solved).Frame)];
        var carriers = new LimbCarriers(limb, pose);
        return pose.While(limb.ShowsTurned, () =>
        {
            carriers.Keep();
            foreach (var (joint, frame) in limb.Joints.Zip(wanted))
                pose.Place(joint.Turner, frame);
            return new LimbMatch(Compare.Each(limb, wanted, joint => pose.Frames.WorldOf(joint.Turned)), pose.Notes);
        });
    }
}
