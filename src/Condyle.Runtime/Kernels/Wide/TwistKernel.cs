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
        {
            ref readonly var item = ref batch.Items[i];
            var (start, end) = (pose.Worlds.Wide(item.Start).Turn, pose.Worlds.Wide(item.End).Turn);
            var turn = WideTurn.All(item.Before) * WideTurn.Seen(start, end) * WideTurn.All(item.After);
            var axis = WideVector.All(item.Axis);
            var half = HalfAngle.Of(WideVector.Dot(turn.Vector, axis), turn.W, out _); // none is no roll
            var (sine, cosine) = HalfAngle.Parts(half * item.Share);
            var roll = axis * sine;
            var carrier = item.IsCarriedByEnd ? end : start;
            batch.Targets.Turn(i, carrier * new WideTurn(roll.X, roll.Y, roll.Z, cosine) * WideTurn.All(item.AtRest), batch.Targets.Stand(i, pose), pose);
        }
    }
}
