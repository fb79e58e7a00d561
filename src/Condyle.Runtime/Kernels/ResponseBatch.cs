namespace Condyle.Runtime.Kernels;

/// <summary>Responses on channels: their curves' sums, counted from rest, on top of the channels that the node has otherwise.</summary>
internal sealed class ResponseBatch : Batch
{
    /// <summary>The channels that are written.</summary>
    public required int[] Channels { get; init; }

    /// <summary>The channels that the node has otherwise.</summary>
    public required int[] Bases { get; init; }

    /// <summary>Moves go along the node's own axes as it rests.</summary>
    public required Rotations RestTurns { get; init; }

    /// <summary>For each node, the end of its stretch of curves.</summary>
    public required int[] Ends { get; init; }

    public required Curves Curves { get; init; }

    /// <summary>What each curve sets: 0 to 2 the moves, 3 to 5 the turns, 6 to 8 the scales along X, Y and Z.</summary>
    public required int[] Components { get; init; }

    protected override void RunOne(Buffers pose) => One.ResponseKernel.Run(this, pose);

    protected override void RunEight(Buffers pose) => Eight.ResponseKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.ResponseKernel.Run(this, pose);
}

/// <summary>Weights of morph targets: the sums of their curves.</summary>
internal sealed class MorphBatch : Batch
{
    public required int[] Morphs { get; init; }

    /// <summary>For each morph target, the end of its stretch of curves.</summary>
    public required int[] Ends { get; init; }

    public required Curves Curves { get; init; }

    protected override void RunOne(Buffers pose) => One.MorphKernel.Run(this, pose);

    protected override void RunEight(Buffers pose) => Eight.MorphKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.MorphKernel.Run(this, pose);
}
