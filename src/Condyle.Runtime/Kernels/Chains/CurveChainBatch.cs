namespace Condyle.Runtime.Kernels;

/// <summary>
/// Curve chains: lays copies along curves through nodes. Each joint keeps the offset and the turn that it has at rest from the curve's frame; the frames start with
/// the first node's turn, and what the last node is turned beyond them is spread along the curve. Bones point from place to place and keep their length but for the stretch.
/// </summary>
internal sealed class CurveChainBatch : Batch
{
    public required CopyChains Chains { get; init; }

    /// <summary>For each curve, the end of its stretch of nodes.</summary>
    public required int[] NodeEnds { get; init; }

    /// <summary>The world slots of the nodes.</summary>
    public required int[] Nodes { get; init; }

    /// <summary>Along each curve's start at rest and across it, in the frame of its first node; and of its end, in that of its last.</summary>
    public required CurveEnds Starts { get; init; }

    public required CurveEnds Ends { get; init; }

    /// <summary>The curves' lengths at rest.</summary>
    public required float[] Lengths { get; init; }

    /// <summary>The bones' lengths together at rest.</summary>
    public required float[] ChainLengths { get; init; }

    /// <summary>The weight slot of each curve's stretch.</summary>
    public required int[] Stretches { get; init; }

    /// <summary>Each joint's length from the curve's start at rest.</summary>
    public required float[] At { get; init; }

    /// <summary>From the curve to each joint at rest, its rotation and the direction of its bone, in the frame of the curve there.</summary>
    public required Vectors Offsets { get; init; }

    public required Rotations Turns { get; init; }

    public required Vectors Bones { get; init; }

    protected override void RunOne(Buffers pose) => One.CurveChainKernel.Run(this, pose);

    protected override void RunEight(Buffers pose) => Eight.CurveChainKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.CurveChainKernel.Run(this, pose);
}

/// <summary>Directions along the ends of curves at rest and across them, in the frames of the nodes there.</summary>
internal sealed class CurveEnds
{
    public required Vectors Along { get; init; }

    public required Vectors Across { get; init; }
}
