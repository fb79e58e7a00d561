using System.Runtime.CompilerServices;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Shares of twists: carrier · turn(b, share · θ) · the rotation in the carrier at rest.</summary>
internal static class TwistKernel
{
    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static void Run(TwistBatch batch, Buffers pose)
    {
        for (var i = 0; i < batch.Items.Length; i++)
            batch.Targets.Turn(i, InWorld(in batch.Items[i], pose), batch.Targets.Stand(i, pose), pose);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn InWorld(in SharedRoll item, Buffers pose)
    {
        var (start, end) = (pose.Frames.Registers[item.Start].Turn, pose.Frames.Registers[item.End].Turn);
        var turn = WideTurn.All(item.Before) * WideTurn.Seen(start, end) * WideTurn.All(item.After);
        var axis = WideVector.All(item.Axis);
        var half = HalfAngle.Of(WideVector.Dot(turn.Vector, axis), turn.W, out _); // none is no roll
        var (sine, cosine) = HalfAngle.Parts(half * item.Share);
        var roll = axis * sine;
        var carrier = item.IsCarriedByEnd ? end : start;
        return carrier * new WideTurn(roll.X, roll.Y, roll.Z, cosine) * WideTurn.All(item.AtRest);
    }
}

/// <summary>The same without scale on the way: channel = (base · placement)⁻¹ · rotation.</summary>
internal static class TwistFrameKernel
{
    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static void Run(TwistFrameBatch batch, Buffers pose)
    {
        for (var i = 0; i < batch.Items.Length; i++)
        {
            ref readonly var item = ref batch.Items[i];
            var stand = pose.Frames.Registers[item.Base].Turn;
            if (batch.IsPlaced)
                stand *= WideTurn.All(item.Placement);
            pose.Turns.Set(item.Channel, WideTurn.Seen(stand, TwistKernel.InWorld(in item.Roll, pose)).Trued());
        }
    }
}
