using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>
/// Two-bone IK: turns a copy's three joints so that its tip is at the goal, its bend faces the pole, and its tip turns with the goal from rest.
/// Where it stretches, the middle joint and the tip also move along their bones; else translations stay zero.
/// </summary>
/// <remarks>
/// The distance is that of <see cref="TwoBoneReach"/>, the triangle <see cref="TwoBoneTriangle"/>, the plane <see cref="BendPlane"/>, which lists where
/// it isn't continuous; a dial or a measured angle turns that plane about its line. It begins anew after a whole turn, so a measured angle's jump doesn't show. At the distance of rest the triangle is the unsolved one.
/// A copy that is straight but for a slight bend beside its plane leans to that bend by what it is at rest.
/// </remarks>
internal sealed class SolvedTwoBone(RigTwoBone solver, RigNode goal, RigNode? pole) : IChannelWriter
{
    public RigTwoBone Solver => solver;

    public RigCopy Copy => solver.Copy!;

    public RigNode Goal => goal;

    public RigNode? Pole => pole;

    public TwoBoneTask TaskIn(PoseFrames frames) => TwoBoneTask.Of(solver, goal, pole, frames);

    public Trs ChannelsOf(RigNode node, PoseFrames frames) => frames.Once(this, Solve)[Copy.Joints.IndexOf(node)];

    private Trs[] Solve(PoseFrames frames)
    {
        var task = TaskIn(frames);
        var factor = task.Reach.Factor;
        return task.Unsolved.Channels(task.TurnsIn(task.After), [factor, factor], Vector3d.Zero, frames);
    }
}
