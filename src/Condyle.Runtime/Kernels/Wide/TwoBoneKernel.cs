using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
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
        var middle = root * WideAffine.All(item.Middle);
        var before = WidePlane.Spanned(root.Direction(WideVector.All(item.Bend.Line)), root.Direction(WideVector.All(item.Bend.Side)));
        var limb = Unsolved(before, root.Direction(WideVector.All(item.Middle.Origin)), middle.Direction(WideVector.All(item.Tip.Origin)));
        var frames = pose.Frames.Registers;
        var goal = frames[item.Aim.Goal];
        var toGoal = goal.Origin - root.Origin;
        var distance = toGoal.Length;
        var toPole = kind.HasPole ? frames[item.Aim.Pole].Origin - root.Origin : WideVector.Zero;
        var farOut = goal.Origin.Span + root.Origin.Span;
        var after = before.Towards(toGoal, distance, toPole, (limb.First.Length + limb.Second.Length) * Lanes.Create(SolverEnds.Near), farOut);
        if (kind.IsTurned)
            after = after.Turned((pose.Inputs.Wide(item.Aim.Turner) - Lanes.Create(item.Aim.Unturned)) * Lanes.Create(MathF.PI / 180));

        var stretch = new WideStretch { Stretch = pose.Weights.Wide(item.Aim.Stretch), Most = Lanes.Create(item.Aim.Most), Softness = Lanes.Create(item.Aim.Softness) };
        var solved = Solved(limb, distance, farOut, kind, stretch);
        var longer = solved.Factor - Lanes.Create(1f);
        var turned = Write(item.RootChannel, Turned(limb.First, before, root, solved.First, after), WideVector.Zero, root, pose) * WideAffine.All(item.Middle);
        var tip = Write(item.MiddleChannel, Turned(limb.Second, before, middle, solved.Second, after), WideVector.All(item.MiddleAgain) * longer, turned, pose) * WideAffine.All(item.Tip);
        Write(item.TipChannel, goal.Turn * WideTurn.All(item.Aim.TipInGoal), WideVector.All(item.TipAgain) * longer, tip, pose);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static WideLimb Unsolved(in WidePlane plane, in WideVector first, in WideVector second)
    {
        var near = (first.Length + second.Length) * Lanes.Create(SolverEnds.Near);
        return new() { First = WideBone.Of(plane.Seen(first), near), Second = WideBone.Of(plane.Seen(second), near), Reach = (first + second).Length };
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static SolvedLimb Solved(in WideLimb limb, Lane distance, Lane farOut, LimbKind kind, in WideStretch stretch) => limb.Solve(distance, farOut, kind, stretch);

    /// <summary>How a joint is turned in the world whose bone has another direction in another plane.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static WideTurn Turned(in WideBone bone, in WidePlane before, in WideAffine joint, in WideVector direction, in WidePlane after) =>
        (FrameIn(after, direction) * WideTurn.Seen(FrameIn(before, bone.Direction), joint.Turn)).Trued();

    private static WideTurn FrameIn(in WidePlane plane, in WideVector direction)
    {
        var frame = plane.LongFrame(out var squared);
        return WideBone.Frame(frame, squared, direction, leans: true);
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
