using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Many-bone IK.</summary>
internal static class ManyBoneKernel
{
    public static void Run(ManyBoneBatch batch, Buffers pose)
    {
        for (var i = 0; i < batch.Chains.Count; i++)
            Solve(batch, i, pose);
    }

    private static void Solve(ManyBoneBatch batch, int i, Buffers pose)
    {
        var (chains, room) = (batch.Chains, pose.Room);
        var root = chains.Root(i, pose);
        var (length, atRest) = chains.Unsolved(i, root, room);
        var (goal, count) = (pose.Worlds.Wide(batch.Ends.Goals[i]), chains.BonesOf(i));
        var (before, after, toGoal) = Planes(batch.Ends, i, root, goal.Origin, length, pose);
        var plane = after.Frame * before.Frame.Inverse;
        for (var bone = 0; bone < count; bone++)
            room.Bones.Set(bone, plane.Rotate(room.Rest.Wide(bone)));

        var turns = new BoneTurns(room.Rest, plane, after.Normal, batch.Cones[i]);
        var isLong = Lanes.LessThan(Lanes.Create(Rotation.Tiny), length);
        if (Rigs.Any(isLong))
        {
            var distance = Settle(toGoal, atRest, root.Origin.Length + goal.Origin.Length + length);
            var isElsewhere = isLong & Lanes.OnesComplement(Lanes.Equals(distance, atRest));
            if (Rigs.Any(isElsewhere))
                Bow(new(room, count, length, after), count, distance, atRest, isElsewhere, room);
            new Fabrik(room, count, length, after).Solve(ref turns, distance, atRest, length * batch.Tolerances[i], batch.Rounds[i], isLong);
        }

        turns.Begin();
        for (var bone = 0; bone < count; bone++)
        {
            room.Turns.Set(bone, turns.Next(bone, room.Bones.Wide(bone)) * room.Turns.Wide(bone));
            room.Factors.Set(bone, Lanes.Create(1f));
        }

        room.Turns.Set(count, goal.Turn * batch.Ends.TipsInGoals.Constant(i));
        chains.Write(i, root, WideVector.Zero, pose);
    }

    /// <summary>The plane of the unsolved copy, the one towards the goal and the pole, and how far the goal is from the root.</summary>
    private static (WidePlane Before, WidePlane After, Lane Distance) Planes(SolverEnds ends, int i, in WideAffine root, in WideVector goal, Lane length, Buffers pose)
    {
        var before = WidePlane.Spanned(root.Direction(ends.Lines.Constant(i)), root.Direction(ends.Sides.Constant(i)));
        var toGoal = goal - root.Origin;
        var toPole = ends.Poles[i] == SolverEnds.NoPole ? WideVector.Zero : pose.Worlds.Wide(ends.Poles[i]).Origin - root.Origin;
        return (before, before.Towards(toGoal, toGoal.Length, toPole, length * SolverEnds.Near, goal.Span + root.Origin.Span), toGoal.Length);
    }

    /// <inheritdoc cref="RestDistance"/>
    private static Lane Settle(Lane distance, Lane atRest, Lane farOut) =>
        Lanes.ConditionalSelect(Lanes.LessThanOrEqual(Lanes.Abs(distance - atRest), farOut * RestDistance.Rounding), atRest, distance);

    private static void Bow(ChainBow bow, int count, Lane distance, Lane atRest, Lane isElsewhere, ChainRoom room)
    {
        bow.Bow(room.Bones, bow.AngleFor(distance, atRest), room.Tried);
        for (var bone = 0; bone < count; bone++)
            room.Bones.Set(bone, WideVector.Choose(isElsewhere, room.Tried.Wide(bone), room.Bones.Wide(bone)));
    }
}
