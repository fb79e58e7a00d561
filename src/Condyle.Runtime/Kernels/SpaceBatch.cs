namespace Condyle.Runtime.Kernels;

/// <summary>
/// What carries controls that ride one of several nodes: the average of node · offset by weight. A lone one comes whole; of several, the rigid frames are averaged
/// as a blend does, and each one's scale and shear, as seen in its own rigid frame, by their mean.
/// </summary>
internal sealed class SpaceBatch : Batch
{
    public required int[] Worlds { get; init; }

    /// <summary>For each frame, the end of its stretch of sources.</summary>
    public required int[] Ends { get; init; }

    public required int[] Sources { get; init; }

    public required Affines Offsets { get; init; }

    public required int[] Weights { get; init; }

    /// <summary>The offsets where no frame has scale.</summary>
    public required Rigid[]? RigidOffsets { get; init; }

    protected override void RunOne(Buffers pose) => One.SpaceKernel.Run(this, pose);

    protected override void RunEight(Buffers pose) => Eight.SpaceKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.SpaceKernel.Run(this, pose);
}
