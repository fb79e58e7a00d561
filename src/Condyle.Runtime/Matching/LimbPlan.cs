using Condyle.Model;

namespace Condyle.Runtime.Matching;

/// <summary>A joint of a limb in both copies.</summary>
/// <param name="Index">Its index in <see cref="CompiledRig.Joints"/>.</param>
/// <param name="Solved">The joint that is solved.</param>
/// <param name="Turned">The joint that a control turns.</param>
/// <param name="Turner">That control.</param>
internal sealed record LimbJoint(int Index, RigNode Solved, RigNode Turned, Handle Turner)
{
    public RigNode Original => Solved.Original!;
}

/// <summary>A limb as its matches need it.</summary>
/// <param name="Outside">What the outside sees of it.</param>
/// <param name="Solver">What solves the one copy.</param>
/// <param name="ShowsSolved">The values of switches at which the limb stands as its solved copy; none where that can't be told.</param>
/// <param name="ShowsTurned">Those at which it stands as its turned copy.</param>
/// <param name="Joints">Its joints from root to tip.</param>
internal sealed record LimbPlan(
    CompiledLimb Outside,
    LimbSolver Solver,
    IReadOnlyList<(int Switch, float Value)>? ShowsSolved,
    IReadOnlyList<(int Switch, float Value)>? ShowsTurned,
    IReadOnlyList<LimbJoint> Joints);
