using System.Runtime.CompilerServices;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Two-bone IK with scale on the way: the rotations of the solved bones are written as channels, as nearly as the scale lets them.</summary>
internal static class TwoBoneKernel
{
    public static void Run(TwoBoneBatch batch, Buffers pose)
    {
        foreach (ref readonly var item in batch.Limbs.AsSpan())
            Solve(item, batch.Kind, pose);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Solve(in ScaledLimb item, LimbKind kind, Buffers pose)
    {
        var root = pose.Worlds.Wide(item.Base) * WideAffine.All(item.Root);
        var limb = Unsolved(item, root);
        var frames = pose.Frames.Registers;
        var goal = frames[item.Aim.Goal];
        var aim = new WideAim
        {
            Goal = goal.Origin,
            Pole = frames[item.Aim.Pole].Origin,
            Stretch = pose.Weights.Wide(item.Aim.Stretch),
            Most = Lanes.Create(item.Aim.Most),
            Softness = Lanes.Create(item.Aim.Softness),
            Turn = kind.IsTurned ? pose.Inputs.Wide(item.Aim.Turner) - Lanes.Create(item.Aim.Unturned) : Lanes.Create(0f),
        };
        limb.Solve(aim, kind, root.Origin);

        var longer = limb.Factor - Lanes.Create(1f);
        var middle = Write(item.RootChannel, limb.FirstTurn, WideVector.Zero, root, pose) * WideAffine.All(item.Middle);
        var tip = Write(item.MiddleChannel, limb.SecondTurn, WideVector.All(item.MiddleAgain) * longer, middle, pose) * WideAffine.All(item.Tip);
        Write(item.TipChannel, goal.Turn * WideTurn.All(item.Aim.TipInGoal), WideVector.All(item.TipAgain) * longer, tip, pose);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static WideLimb Unsolved(in ScaledLimb item, in WideAffine root)
    {
        var middle = root * WideAffine.All(item.Middle);
        var first = root.Direction(WideVector.All(item.Middle.Origin));
        var second = middle.Direction(WideVector.All(item.Tip.Origin));
        var (firstLength, secondLength) = (first.Length, second.Length);
        var near = (firstLength + secondLength) * Lanes.Create(SolverEnds.Near);
        var plane = WidePlane.Spanned(root.Direction(WideVector.All(item.Bend.Line)), root.Direction(WideVector.All(item.Bend.Side)));
        return new()
        {
            First = first,
            Second = second,
            FirstLength = firstLength,
            SecondLength = secondLength,
            Reach = (first + second).Length,
            Plane = plane,
            FirstTurn = WideTurn.Seen(WideLimb.Frame(plane, first, near), root.Turn),
            SecondTurn = WideTurn.Seen(WideLimb.Frame(plane, second, near), middle.Turn),
        };
    }

    /// <summary>Writes a turn in the world, and a move, as a joint's channels, and gives the frame of the turned joint.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static WideAffine Write(int channel, in WideTurn world, in WideVector move, in WideAffine stand, Buffers pose)
    {
        var seen = world.At(stand.Origin).In(stand).Turn;
        pose.Moves.Set(channel, move);
        pose.Turns.Set(channel, seen);
        return stand * seen.At(move);
    }
}
