using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>
/// Many-bone IK: turns a copy's joints so that its tip is at the goal and its bend faces the pole. Positions are by <see cref="Fabrik"/>,
/// turns by <see cref="BoneTurns"/>, the plane is <see cref="BendPlane"/>; the tip turns with the goal from rest. Translations stay zero.
/// </summary>
/// <remarks>
/// It starts, in every pose anew, from the unsolved copy turned with the plane towards the goal and bowed (<see cref="ChainBow"/>) by what the goal is nearer or further
/// than the tip at rest. So a straight chain leaves its line to the side of its bend, the pose doesn't depend on those before, and at rest nothing is left to do.
/// It ends as the options say, by default at a millionth of the chain's length or after 32 rounds.
/// Not continuous where <see cref="BendPlane"/>, <see cref="BoneTurns"/> and <see cref="ConeLimits"/> aren't, and, by less than the tolerance, where the number of rounds changes.
/// </remarks>
internal sealed class SolvedManyBone(RigManyBone solver, RigCopy copy, RigNode goal, RigNode? pole) : IChannelWriter
{
    public RigManyBone Solver => solver;

    public RigCopy Copy => copy;

    public RigNode Goal => goal;

    public RigNode? Pole => pole;

    public Trs ChannelsOf(RigNode node, PoseFrames frames) => frames.Once(this, Solve)[copy.Joints.IndexOf(node)];

    /// <summary>The plane in which the copy bends solved.</summary>
    public BendPlane PlaneIn(PoseFrames frames) => PlanesOf(UnsolvedCopy.Of(copy, frames), frames).After;

    private Trs[] Solve(PoseFrames frames)
    {
        var options = ManyBoneOptions.Of(solver, frames.Rest);
        var unsolved = UnsolvedCopy.Of(copy, frames);
        var goalWorld = frames.WorldOf(goal);
        var (before, after) = PlanesOf(unsolved, frames);
        var turns = new BoneTurns([.. unsolved.Bones.Select(bone => bone.Direction ?? Vector3d.Zero)], after.Frame * before.Frame.Inverse);
        var bones = unsolved.Length > Vector3d.Tiny ? Reach(unsolved, after, turns, (goalWorld.Origin - unsolved.Frames[0].Origin).Length, options, goalWorld.Origin.Length) : [.. turns.Rest];

        var turned = new Quaterniond[copy.Joints.Count];
        var turn = Quaterniond.Identity;
        for (var i = 0; i < bones.Length; i++)
        {
            turn = turns.Next(i, turn, bones[i], after.Normal);
            turned[i] = turn * unsolved.Frames[i].Rotation;
        }

        turned[bones.Length] = goalWorld.Rotation * frames.Rest.WorldOf(goal).Rotation.Inverse * frames.Rest.WorldOf(copy.Joints[bones.Length]).Rotation;
        return unsolved.Channels(turned, [.. Enumerable.Repeat(1.0, bones.Length)], Vector3d.Zero, frames);
    }

    private (BendPlane Before, BendPlane After) PlanesOf(UnsolvedCopy unsolved, PoseFrames frames)
    {
        var root = unsolved.Frames[0].Origin;
        var before = RestBend.Of(copy, pole, frames.Rest).In(unsolved.Frames[0]);
        return (before, before.Towards(frames.WorldOf(goal).Origin - root, pole is null ? null : frames.WorldOf(pole).Origin - root, BendPlane.Near * unsolved.Length));
    }

    private static Vector3d[] Reach(UnsolvedCopy unsolved, BendPlane plane, BoneTurns turns, double toGoal, ManyBoneOptions options, double farOut)
    {
        var atRest = unsolved.Reach;
        var distance = RestDistance.Settle(toGoal, atRest, unsolved.Length + unsolved.Frames[0].Origin.Length + farOut);
        var bow = new ChainBow(unsolved.Lengths, plane);
        var bones = bow.Bowed([.. turns.Rest.Select(turns.Plane.Rotate)], bow.AngleFor(distance, atRest));
        var solving = new Fabrik(unsolved.Lengths, options.Cones is { } cones ? new ConeLimits(turns, cones) : null);
        solving.Solve(bones, plane, distance, atRest, options.Tolerance * unsolved.Length, options.Rounds);
        return bones;
    }
}
