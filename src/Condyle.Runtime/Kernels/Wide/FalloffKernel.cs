using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Falloffs: R · axes · q^share · axes⁻¹, T + moves · t, share after share.</summary>
internal static class FalloffKernel
{
    public static void Run(FalloffBatch batch, Buffers pose)
    {
        var next = 0;
        for (var i = 0; i < batch.Channels.Length; i++)
        {
            var (own, channel) = (batch.Bases[i], batch.Channels[i]);
            var (move, turn) = (pose.Moves.Wide(own), pose.Turns.Wide(own));
            for (; next < batch.Ends[i]; next++)
            {
                ref readonly var share = ref batch.Shares[next];
                var axes = WideTurn.All(share.Axes);
                move += WideAffine.All(share.Moves).Direction(pose.Moves.Wide(share.Source) - WideVector.All(share.RestMove));
                turn = (turn * (axes * Power(WideTurn.All(share.RestTurnBack) * pose.Turns.Wide(share.Source), share.Share) * axes.Inverse)).Trued();
            }

            pose.Moves.Set(channel, move);
            pose.Turns.Set(channel, turn);
            pose.Scales.Set(channel, pose.Scales.Wide(own));
        }
    }

    /// <summary>So many times a turn, which is taken the short way.</summary>
    private static WideTurn Power(in WideTurn turn, float exponent)
    {
        var one = Lanes.Create(1f);
        var sign = Lanes.ConditionalSelect(Lanes.LessThan(turn.W, Lanes.Create(0f)), -one, one);
        var length = turn.Vector.Length;
        var (sine, cosine) = HalfAngle.Parts(HalfAngle.Of(length, turn.W * sign, out _) * exponent);
        var vector = turn.Vector * (sign * sine / length);
        return WideTurn.Choose(Lanes.LessThan(Lanes.Create(Rotation.Tiny), length), new(vector.X, vector.Y, vector.Z, cosine), WideTurn.Identity);
    }
}
