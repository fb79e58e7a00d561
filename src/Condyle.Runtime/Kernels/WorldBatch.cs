namespace Condyle.Runtime.Kernels;

/// <summary>World frames, with scale, of nodes that stand still on a base that moves: world = base · offset.</summary>
internal sealed class StillWorldBatch : Batch
{
    public required int[] Worlds { get; init; }

    public required int[] Bases { get; init; }

    public required Affines Offsets { get; init; }

    protected override void RunOne(Buffers pose) => One.StillWorldKernel.Run(this, pose);

    protected override void RunEight(Buffers pose) => Eight.StillWorldKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.StillWorldKernel.Run(this, pose);
}

/// <summary>World frames of nodes with channels and scale: world = base · placement · T · R · S. Exported joints have no placement.</summary>
internal sealed class ChannelWorldBatch : Batch
{
    public required int[] Worlds { get; init; }

    public required int[] Bases { get; init; }

    /// <summary>None: the channels stand right on the base.</summary>
    public required Affines? Placements { get; init; }

    public required int[] Channels { get; init; }

    protected override void RunOne(Buffers pose) => One.ChannelWorldKernel.Run(this, pose);

    protected override void RunEight(Buffers pose) => Eight.ChannelWorldKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.ChannelWorldKernel.Run(this, pose);
}
