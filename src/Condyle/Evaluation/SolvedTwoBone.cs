using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>
/// Two-bone IK: turns a copy's three joints so that its tip is at the goal, its bend faces the pole, and its tip turns with the goal from rest.
/// Translations stay zero.
/// </summary>
/// <remarks>
/// Bones and unsolved bend are read from the copy with its channels at zero, under its parent as it is now.
/// Without a pole, or with the pole on the line from root to goal, the bend is carried along by the smallest turn of that line.
/// Not continuous: with the pole on the line; with the goal at the root; without a pole, with the goal opposite to where it was unsolved
/// (half a turn about the bend's normal is taken).
/// Where the copy is straight but for a bend below <see cref="Bend.Straight"/>, rest holds within that bend.
/// Under a parent with uneven scale a bone changes length as it turns, which no rotation can hold: the joints then take the directions
/// of the solved triangle as nearly as <see cref="Affine3d.Frame"/> does.
/// </remarks>
internal sealed class SolvedTwoBone(RigCopy copy, RigNode goal, RigNode? pole) : IChannelWriter
{
    /// <summary>Nearer than this share of the bones' length, the goal is at the root and the pole on the line.</summary>
    public const double Near = 1e-6;

    private Trs[]? solution;

    public Trs ChannelsOf(RigNode node, PoseFrames frames)
    {
        solution ??= Solve(frames);
        return solution[copy.Joints.IndexOf(node)];
    }

    private Trs[] Solve(PoseFrames frames)
    {
        var placements = copy.Joints.Select(frames.PlacementOf).ToArray();
        var unsolved = new Affine3d[3];
        unsolved[0] = frames.StandOf(copy.Joints[0]);
        unsolved[1] = unsolved[0] * placements[1];
        unsolved[2] = unsolved[1] * placements[2];
        var (u0, u1, u2) = (unsolved[0].Origin, unsolved[1].Origin, unsolved[2].Origin);
        var (first, second) = ((u1 - u0).Length, (u2 - u1).Length);
        var near = Near * (first + second);

        var lineBefore = Bend.LineOf(u0, u1, u2);
        var sideBefore = Bend.Of(u0, u1, u2) ?? SideWhenStraight(unsolved[0], lineBefore, frames.Rest);
        var normalBefore = Vector3d.Cross(lineBefore, sideBefore);

        var goalWorld = frames.WorldOf(goal);
        var toGoal = goalWorld.Origin - u0;
        var line = toGoal.Length > near && toGoal.Direction is { } direction ? direction : lineBefore;
        var towardsPole = pole is null ? Vector3d.Zero : (frames.WorldOf(pole).Origin - u0).Across(line);
        var side = towardsPole.Length > near && towardsPole.Direction is { } faced
            ? faced
            : Quaterniond.Between(lineBefore, line, normalBefore).Rotate(sideBefore);
        var normal = Vector3d.Cross(line, side);
        var triangle = TwoBoneTriangle.Solve(u0, first, second, line, toGoal.Length, side);

        var turned = new[]
        {
            Bone(triangle.Middle - u0, line, normal) * Bone(u1 - u0, lineBefore, normalBefore).Inverse * unsolved[0].Rotation,
            Bone(triangle.Tip - triangle.Middle, line, normal) * Bone(u2 - u1, lineBefore, normalBefore).Inverse * unsolved[1].Rotation,
            goalWorld.Rotation * frames.Rest.WorldOf(goal).Rotation.Inverse * frames.Rest.WorldOf(copy.Joints[2]).Rotation,
        };
        return Channels(unsolved[0], placements, turned, frames);
    }

    private Trs[] Channels(Affine3d stand, Affine3d[] placements, Quaterniond[] turned, PoseFrames frames)
    {
        var channels = new Trs[3];
        for (var i = 0; i < 3; i++)
        {
            if (i > 0)
                stand *= placements[i];
            var local = stand.Inverse() * Affine3d.Rigid(Vector3d.Zero, turned[i]);
            channels[i] = frames.Project(copy.Joints[i], local) with { Translation = Vector3d.Zero };
            stand *= channels[i].ToAffine();
        }

        return channels;
    }

    /// <summary>The bend of a copy that is straight: towards the pole at rest, else as declared, both carried to where the copy is; else any.</summary>
    private Vector3d SideWhenStraight(Affine3d root, Vector3d line, RestPose rest)
    {
        var carry = root * rest.WorldOf(copy.Joints[0]).Inverse();
        if (pole is not null && Bend.Declared(carry.Apply(rest.WorldOf(pole).Origin) - root.Origin, line) is { } faced)
            return faced;
        return copy.Chain.Bend.TryKnown(out var declared) && declared is { } towards && Bend.Declared(carry.Turn(towards), line) is { } side
            ? side
            : line.AnyAcross();
    }

    /// <summary>The rotation of a frame whose first axis is the bone, the line where it has no length, and whose second is nearest the bend's normal.</summary>
    private static Quaterniond Bone(Vector3d bone, Vector3d line, Vector3d normal)
    {
        var along = bone.Direction ?? line;
        var across = normal.Across(along).Direction ?? along.AnyAcross();
        return Quaterniond.FromAxes(along, across, Vector3d.Cross(along, across));
    }
}
