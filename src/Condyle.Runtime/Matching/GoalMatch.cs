using Condyle.Evaluation;

namespace Condyle.Runtime.Matching;

/// <summary>Sets the controls of a limb's solver so that the solved copy stands as the turned one.</summary>
/// <remarks>They are set for the moment after the switch: what carries the limb by then stands where it stood (<see cref="LimbCarriers"/>).</remarks>
internal static class GoalMatch
{
    private const int Rounds = 4;

    /// <param name="limb">The limb.</param>
    /// <param name="pose">The pose, whose controls are set.</param>
    /// <param name="switches">Whether the switch goes to the solved copy after it, so that what carries the limb must stay where it is by then.</param>
    public static LimbMatch Make(LimbPlan limb, LivePose pose, bool switches)
    {
        List<Affine3d> wanted = [.. limb.Joints.Select(joint => pose.Frames.WorldOf(joint.Turned).Frame)];
        var carriers = new LimbCarriers(limb, pose);
        return pose.While(switches ? limb.ShowsSolved : null, () =>
        {
            var match = limb.Solver.MatchIn(limb, pose, wanted);
            pose.Unnoted(match.Reach);
            for (var round = 0; switches && round < Rounds && carriers.Keep(); round++)
                pose.Unnoted(match.Reach); // what follows the goal has moved, and with it the limb's root
            match.Settle();
            var joints = Compare.Each(limb, wanted, joint => pose.Frames.WorldOf(joint.Solved));
            pose.Notes.AddRange(match.Notes());
            return new LimbMatch(joints, pose.Notes);
        });
    }
}
