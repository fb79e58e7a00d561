using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>
/// Two-bone IK in closed form, by the law of cosines (Euclid, Elements II.12–13): turns a copy's three joints so that its tip is at the goal,
/// its bend faces the pole, and its tip turns with the goal from rest. Where it stretches, the middle joint and the tip also move along their bones.
/// </summary>
/// <remarks>
/// At the distance of rest the bones are the unsolved ones in their new plane. A copy that is straight but for a slight bend beside its plane leans to that bend.
/// Not continuous with the pole on the line from root to goal, with the goal at the root, and, without a pole, with the goal opposite to where it was unsolved.
/// </remarks>
internal sealed class TwoBoneBatch : Batch
{
    public required CopyChains Chains { get; init; }

    public required SolverEnds Ends { get; init; }

    public required TwoBoneReaches Reaches { get; init; }

    protected override void RunOne(Buffers pose)
    {
        for (var i = 0; i < Chains.Count; i++)
            Solve(i, pose, pose.Room);
    }

    private void Solve(int i, Buffers pose, ChainRoom room)
    {
        var root = Chains.Root(i, pose);
        var (length, atRest) = Chains.Unsolved(i, root, room);
        var (first, second) = (room.Lengths[0], room.Lengths[1]);
        var (firstBone, secondBone) = (room.Rest[0] * first, room.Rest[1] * second);
        var (before, after, toGoal) = Ends.Planes(i, root, length, pose);

        var near = SolverEnds.Near * length;
        var distance = RestDistance.Settle(toGoal, atRest, Ends.FarOut(i, root, pose) + length);
        var (reach, shortBy, factor) = Reaches.Of(i, distance, atRest, first, second, pose);
        var (firstSolved, secondSolved) = reach == atRest
            ? (before.Brought(firstBone, after), before.Brought(secondBone, after))
            : Bones(firstBone, first, second, before, after, reach, shortBy, near);

        room.Turns[0] = Turn(firstBone, firstSolved, first > near, before, after) * room.Turns[0];
        room.Turns[1] = Turn(secondBone, secondSolved, second > near, before, after) * room.Turns[1];
        room.Turns[2] = Ends.TipTurn(i, pose);
        room.Factors[0] = room.Factors[1] = factor;
        Chains.Write(i, root, Vector3.Zero, pose, room);
    }

    private static (Vector3 First, Vector3 Second) Bones(Vector3 firstBone, float first, float second, in Plane before, in Plane after, float distance, float shortBy, float near)
    {
        var isFolded = distance <= near && MathF.Abs(first - second) <= near;
        var (foot, height) = isFolded ? (0, first) : Triangle(first, second, distance, shortBy);
        var beside = Rotation.Across(firstBone, before.Line);
        var towards = (after.Side * (height + Vector3.Dot(beside, before.Side) - beside.Length())) + (after.Normal * Vector3.Dot(beside, before.Normal));
        if (!Rotation.TryDirection(towards, out var side))
            side = after.Side;
        var solved = (after.Line * foot) + (side * height);
        return (solved, (after.Line * distance) - solved);
    }

    /// <summary>Where the middle joint stands over the line from root to tip: how far along it and how high above it.</summary>
    private static (float Foot, float Height) Triangle(float first, float second, float distance, float shortBy)
    {
        if (distance < Rotation.Tiny)
            return (0, first);

        // Heron's formula (Metrica I.8): no difference of squares, which would lose the height of an almost straight limb; exactly zero where the reach is at its end.
        var (sum, difference) = (first + second, first - second);
        var area = (sum + distance) * shortBy * (distance + difference) * (distance - difference);
        return (((difference * (sum / distance)) + distance) / 2, MathF.Sqrt(MathF.Max(0, area)) / (2 * distance));
    }

    /// <summary>The turn of a bone in the world from one plane to another; a bone of no length takes the line's.</summary>
    private static Quaternion Turn(Vector3 bone, Vector3 solved, bool hasLength, in Plane before, in Plane after) =>
        after.Bone(hasLength ? solved : Vector3.Zero) * Quaternion.Conjugate(before.Bone(hasLength ? bone : Vector3.Zero));
}
