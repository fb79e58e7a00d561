namespace Condyle.Runtime.Kernels;

/// <summary>World frames of nodes that stand still on a base that moves: world = base · offset.</summary>
internal sealed class StillWorldBatch : Batch
{
    public required int[] Worlds { get; init; }

    public required int[] Bases { get; init; }

    public required Affines Offsets { get; init; }

    public required WorldTurns Turns { get; init; }

    protected override void RunOne(Buffers pose) => One.StillWorldKernel.Run(this, pose);

    protected override void RunEight(Buffers pose) => Eight.StillWorldKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.StillWorldKernel.Run(this, pose);
}

/// <summary>World frames of nodes with channels: world = base · placement · T · R · S. Exported joints have no placement.</summary>
internal sealed class ChannelWorldBatch : Batch
{
    public required int[] Worlds { get; init; }

    public required int[] Bases { get; init; }

    /// <summary>None: the channels stand right on the base.</summary>
    public required Affines? Placements { get; init; }

    public required int[] Channels { get; init; }

    public required WorldTurns Turns { get; init; }

    protected override void RunOne(Buffers pose) => One.ChannelWorldKernel.Run(this, pose);

    protected override void RunEight(Buffers pose) => Eight.ChannelWorldKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.ChannelWorldKernel.Run(this, pose);
}

/// <summary>How a batch comes by the rotations of its world frames.</summary>
/// <param name="AreKept">Whether somebody reads them.</param>
/// <param name="AreRigid">Whether no frame has scale, so that they are products of rotations.</param>
/// <param name="Offsets">Then the rotations of the placements or offsets.</param>
internal sealed record WorldTurns(bool AreKept, bool AreRigid, Rotations Offsets);
