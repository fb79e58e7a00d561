namespace Condyle.Runtime.Kernels;

/// <summary>
/// Blends with scale on the way. Of lone nodes and of chains' first joints: the sources' world frames, averaged. Of chains' later joints: where each source joint stands in the
/// source joint before it, averaged, and taken from the chain's joint before, so that bones keep their length halfway.
/// </summary>
internal sealed class BlendBatch : Batch
{
    public required BlendTargets Targets { get; init; }

    public required BlendSource[] Sources { get; init; }

    /// <summary>For each target, the end of its stretch of sources.</summary>
    public required int[] SourceEnds { get; init; }

    protected override void RunOne(Buffers pose) => One.BlendKernel.Run(this, pose);

    protected override void RunEight(Buffers pose) => Eight.BlendKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.BlendKernel.Run(this, pose);
}
