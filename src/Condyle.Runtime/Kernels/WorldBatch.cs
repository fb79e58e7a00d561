namespace Condyle.Runtime.Kernels;

/// <summary>World frames of nodes that stand still on a base that moves: world = base · offset.</summary>
internal sealed class StillWorldBatch : Batch
{
    public required int[] Worlds { get; init; }

    public required int[] Bases { get; init; }

    public required Affines Offsets { get; init; }

    public override void Run(Buffers pose)
    {
        for (var i = 0; i < Worlds.Length; i++)
            pose.Worlds[Worlds[i]] = pose.Worlds[Bases[i]] * Offsets[i];
    }
}

/// <summary>World frames of nodes with channels behind a placement: world = base · placement · T · R · S.</summary>
internal sealed class PlacedWorldBatch : Batch
{
    public required int[] Worlds { get; init; }

    public required int[] Bases { get; init; }

    public required Affines Placements { get; init; }

    public required int[] Channels { get; init; }

    public override void Run(Buffers pose)
    {
        for (var i = 0; i < Worlds.Length; i++)
            pose.Worlds[Worlds[i]] = pose.Worlds[Bases[i]] * (Placements[i] * pose.ChannelFrame(Channels[i]));
    }
}

/// <summary>World frames of nodes whose channels stand right on their base, as those of exported joints: world = base · T · R · S.</summary>
internal sealed class ChannelWorldBatch : Batch
{
    public required int[] Worlds { get; init; }

    public required int[] Bases { get; init; }

    public required int[] Channels { get; init; }

    public override void Run(Buffers pose)
    {
        for (var i = 0; i < Worlds.Length; i++)
            pose.Worlds[Worlds[i]] = pose.Worlds[Bases[i]] * pose.ChannelFrame(Channels[i]);
    }
}
