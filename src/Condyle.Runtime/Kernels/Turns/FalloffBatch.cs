using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>
/// Falloffs: with a source's turn from rest q and move t, a joint's rotation R becomes R · axes · q^share · axes⁻¹ and its translation T + moves · t, one share after another,
/// on top of the channels that the joint has otherwise.
/// </summary>
internal sealed class FalloffBatch : Batch
{
    /// <summary>The channels that are written.</summary>
    public required int[] Channels { get; init; }

    /// <summary>The channels that the joint has otherwise.</summary>
    public required int[] Bases { get; init; }

    /// <summary>For each joint, the end of its stretch of shares.</summary>
    public required int[] Ends { get; init; }

    public required TurnShare[] Shares { get; init; }

    protected override void RunOne(Buffers pose)
    {
        var next = 0;
        for (var i = 0; i < Channels.Length; i++)
        {
            var (move, turn) = (pose.Moves[Bases[i]], pose.Turns[Bases[i]]);
            for (; next < Ends[i]; next++)
            {
                ref readonly var share = ref Shares[next];
                move += share.Moves.Direction(pose.Moves[share.Source] - share.RestMove);
                turn = Quaternion.Normalize(turn * (share.Axes * Power(share.RestTurnBack * pose.Turns[share.Source], share.Share) * Quaternion.Conjugate(share.Axes)));
            }

            pose.Moves[Channels[i]] = move;
            pose.Turns[Channels[i]] = turn;
            pose.Scales[Channels[i]] = pose.Scales[Bases[i]];
        }
    }

    /// <summary>So many times a turn, which is taken the short way.</summary>
    private static Quaternion Power(Quaternion turn, float exponent)
    {
        var (vector, cosine) = turn.W < 0 ? (new Vector3(-turn.X, -turn.Y, -turn.Z), -turn.W) : (new Vector3(turn.X, turn.Y, turn.Z), turn.W);
        var sine = vector.Length();
        var half = exponent * MathF.Atan2(sine, cosine);
        return sine > Rotation.Tiny ? new Quaternion(vector * (MathF.Sin(half) / sine), MathF.Cos(half)) : Quaternion.Identity;
    }
}

/// <summary>A share of a source's turn and move.</summary>
/// <param name="Source">The source's channels.</param>
/// <param name="RestMove">Its translation at rest.</param>
/// <param name="RestTurnBack">Its rotation at rest, backwards.</param>
/// <param name="Share">The share.</param>
/// <param name="Axes">From axes of turns in the source's own frame to those in the joint's.</param>
/// <param name="Moves">From moves in the source's channels to the same in the joint's, by the share; flat where it takes none.</param>
internal readonly record struct TurnShare(int Source, Vector3 RestMove, Quaternion RestTurnBack, float Share, Quaternion Axes, Affine Moves);
