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

    protected override void RunOne(Buffers pose) => One.FalloffKernel.Run(this, pose);

    protected override void RunEight(Buffers pose) => Eight.FalloffKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.FalloffKernel.Run(this, pose);
}

/// <summary>A share of a source's turn and move.</summary>
/// <param name="Source">The source's channels.</param>
/// <param name="RestMove">Its translation at rest.</param>
/// <param name="RestTurnBack">Its rotation at rest, backwards.</param>
/// <param name="Share">The share.</param>
/// <param name="Axes">From axes of turns in the source's own frame to those in the joint's.</param>
/// <param name="Moves">From moves in the source's channels to the same in the joint's, by the share; flat where it takes none.</param>
internal readonly record struct TurnShare(int Source, Vector3 RestMove, Quaternion RestTurnBack, float Share, Quaternion Axes, Affine Moves);
