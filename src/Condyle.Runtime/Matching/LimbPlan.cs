using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Matching;

/// <summary>A joint of a limb in both copies.</summary>
/// <param name="Index">Its index in <see cref="CompiledRig.Joints"/>.</param>
/// <param name="Solved">The joint that two-bone IK solves.</param>
/// <param name="Turned">The joint that a control turns.</param>
/// <param name="Turner">That control.</param>
internal sealed record LimbJoint(int Index, RigNode Solved, RigNode Turned, Handle Turner)
{
    public RigNode Original => Solved.Original!;
}

/// <summary>A limb as its matches need it.</summary>
/// <param name="Outside">What the outside sees of it.</param>
/// <param name="Solver">What solves the one copy.</param>
/// <param name="Goal">The goal's handle.</param>
/// <param name="PoleNode">The pole, whether it has a handle or not.</param>
/// <param name="Pole">The pole's handle.</param>
/// <param name="Stretch">The switch by which the bones lengthen, where it does nothing else.</param>
/// <param name="ShowsSolved">The values of switches at which the limb stands as its solved copy; none where that can't be told.</param>
/// <param name="ShowsTurned">Those at which it stands as its turned copy.</param>
/// <param name="Joints">Its joints from root to tip.</param>
internal sealed record LimbPlan(
    CompiledLimb Outside,
    RigTwoBone Solver,
    Handle Goal,
    RigNode? PoleNode,
    Handle? Pole,
    RigSwitch? Stretch,
    IReadOnlyList<(int Switch, float Value)>? ShowsSolved,
    IReadOnlyList<(int Switch, float Value)>? ShowsTurned,
    IReadOnlyList<LimbJoint> Joints)
{
    public TwoBoneTask TaskIn(PoseFrames frames) => TwoBoneTask.Of(Solver, Goal.Node, PoleNode, frames);
}
