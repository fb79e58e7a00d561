using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>
/// Many-bone IK: turns a copy's joints so that its tip is at the goal, its bend faces the pole, and its tip turns with the goal from rest.
/// Positions by <see cref="Fabrik"/> from the unsolved copy, turned with the plane towards the goal and bowed by what the goal is nearer or further; turns by <see cref="BoneTurns"/>.
/// </summary>
internal sealed class ManyBoneBatch : Batch
{
    public required CopyChains Chains { get; init; }

    public required SolverEnds Ends { get; init; }

    /// <summary>How near to the goal each tip must come, as a share of the chain's length.</summary>
    public required float[] Tolerances { get; init; }

    public required int[] Rounds { get; init; }

    /// <summary>How far the bone of each joint may turn from where it rests, in radians; empty for a solver without limits.</summary>
    public required float[][] Cones { get; init; }

    protected override void RunOne(Buffers pose)
    {
        for (var i = 0; i < Chains.Count; i++)
            Solve(i, pose, pose.Room);
    }

    private void Solve(int i, Buffers pose, ChainRoom room)
    {
        var root = Chains.Root(i, pose);
        var (length, atRest) = Chains.Unsolved(i, root, room);
        var count = Chains.Ends[i] - Chains.FirstOf(i) - 1;
        var (before, after, toGoal) = Ends.Planes(i, root, length, pose);
        var plane = after.Frame * Quaternion.Conjugate(before.Frame);
        var turns = new BoneTurns(room.Rest.AsSpan(0, count), plane, after.Normal, Cones[i]);
        var bones = room.Bones.AsSpan(0, count);
        for (var bone = 0; bone < count; bone++)
            bones[bone] = Vector3.Transform(room.Rest[bone], plane);
        if (length > Rotation.Tiny)
        {
            var lengths = room.Lengths.AsSpan(0, count);
            var distance = RestDistance.Settle(toGoal, atRest, Ends.FarOut(i, root, pose) + length);
            var bow = new ChainBow(lengths, length, after);
            if (distance != atRest)
                bow.Bow(bones, bow.AngleFor(distance, atRest), bones);
            new Fabrik(lengths, length, after, room.Tried.AsSpan(0, count)).Solve(bones, ref turns, distance, atRest, Tolerances[i] * length, Rounds[i]);
        }

        turns.Begin();
        for (var bone = 0; bone < count; bone++)
        {
            room.Turns[bone] = turns.Next(bone, bones[bone]) * room.Turns[bone];
            room.Factors[bone] = 1;
        }

        room.Turns[count] = Ends.TipTurn(i, pose);
        Chains.Write(i, root, Vector3.Zero, pose, room);
    }
}
