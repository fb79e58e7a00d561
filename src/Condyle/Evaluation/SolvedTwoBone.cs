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
internal sealed class SolvedTwoBone(RigTwoBone solver, RigCopy copy, RigNode goal, RigNode? pole) : IChannelWriter
{
    private Trs[]? solution;

    public Trs ChannelsOf(RigNode node, PoseFrames frames)
    {
        solution ??= Solve(frames);
        return solution[copy.Joints.IndexOf(node)];
    }

    private Trs[] Solve(PoseFrames frames)
    {
        var options = TwoBoneOptions.Of(solver, frames.Rest);
        var unsolved = UnsolvedCopy.Of(copy, frames);
        var root = unsolved.Frames[0].Origin;
        var (first, second) = (unsolved.Lengths[0], unsolved.Lengths[1]);
        var near = BendPlane.Near * unsolved.Length;

        var goalWorld = frames.WorldOf(goal);
        var toGoal = goalWorld.Origin - root;
        var turn = options.Turner is { } turner ? (frames.ValueOf(turner) - options.Unturned) * (Math.PI / 180) : 0;
        var before = RestBend.Of(copy, pole, frames.Rest).In(unsolved.Frames[0]);
        var after = before.Towards(toGoal, pole is null ? null : frames.WorldOf(pole).Origin - root, near).Turned(turn);

        var atRest = unsolved.Reach;
        var distance = RestDistance.Settle(toGoal.Length, atRest, unsolved.Length + root.Length + goalWorld.Origin.Length);
        var stretch = Math.Min(Math.Max(frames.ValueOf(options.Stretch), 0), 1);
        var reach = TwoBoneReach.Of(distance, atRest, first, second, options.Softness * unsolved.Length, stretch, options.Most);
        var (firstSolved, secondSolved) = reach.Distance == atRest
            ? ((after.Frame * before.Frame.Inverse).Rotate(unsolved.Bones[0]), (after.Frame * before.Frame.Inverse).Rotate(unsolved.Bones[1]))
            : Bones(unsolved, before, after, reach, near);
        var turned = new[]
        {
            after.Bone(first > near ? firstSolved : Vector3d.Zero) * before.Bone(first > near ? unsolved.Bones[0] : Vector3d.Zero).Inverse * unsolved.Frames[0].Rotation,
            after.Bone(second > near ? secondSolved : Vector3d.Zero) * before.Bone(second > near ? unsolved.Bones[1] : Vector3d.Zero).Inverse * unsolved.Frames[1].Rotation,
            goalWorld.Rotation * frames.Rest.WorldOf(goal).Rotation.Inverse * frames.Rest.WorldOf(copy.Joints[2]).Rotation,
        };
        return unsolved.Channels(turned, [reach.Factor, reach.Factor], Vector3d.Zero, frames);
    }

    /// <summary>The bones of the triangle in its plane, leaning to the bend beside the plane that the unsolved copy has.</summary>
    private static (Vector3d First, Vector3d Second) Bones(UnsolvedCopy unsolved, BendPlane before, BendPlane after, TwoBoneReach reach, double near)
    {
        var (first, second) = (unsolved.Lengths[0], unsolved.Lengths[1]);
        var triangle = reach.Distance <= near && Math.Abs(first - second) <= near
            ? new TwoBoneTriangle(0, first)
            : TwoBoneTriangle.Solve(first, second, reach.Distance, reach.Short);
        var beside = unsolved.Bones[0].Across(before.Line);
        var side = (after.Side * (triangle.Height + Vector3d.Dot(beside, before.Side) - beside.Length)) + (after.Normal * Vector3d.Dot(beside, before.Normal));
        var solved = (after.Line * triangle.Foot) + ((side.Direction ?? after.Side) * triangle.Height);
        return (solved, (after.Line * reach.Distance) - solved);
    }
}
