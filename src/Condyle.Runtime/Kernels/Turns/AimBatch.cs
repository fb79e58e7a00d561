using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>
/// Aims: rotation = frame(d, u) · frame(p, q)⁻¹ with the direction d to the target and the part u of up across it, and the two as the node sees them at rest.
/// Without an up, or where it lies on the line, the smallest turn from where the parent carries the node.
/// </summary>
internal sealed class AimBatch : Batch
{
    /// <summary>Nearer than this, in metres, nodes stand on each other; and a direction whose part across the line is less lies on it.</summary>
    public const float Near = (float)Evaluation.AimRest.Near;

    /// <summary>By so much of how far from the world's origin they are, places in floats may be off, some levels deep: what is that far from a line may lie on it.</summary>
    public const float Rounding = 1e-6f;

    public required TurnTargets Targets { get; init; }

    /// <summary>How the parents carry the nodes: their frames at rest, on their bases.</summary>
    public required Affines Carried { get; init; }

    /// <summary>The world slots of the nodes to point at.</summary>
    public required int[] At { get; init; }

    /// <summary>What points at them, in the nodes' own frames.</summary>
    public required Vectors Along { get; init; }

    public required AimUp?[] Ups { get; init; }

    protected override void RunOne(Buffers pose) => One.AimKernel.Run(this, pose);

    protected override void RunEight(Buffers pose) => Eight.AimKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.AimKernel.Run(this, pose);
}

/// <summary>What sets the roll of an aim.</summary>
/// <param name="Node">Its world slot.</param>
/// <param name="Axis">The axis of the node that is up; none: where the node stands.</param>
/// <param name="FromRest">From the node's own frame to that of the line and the side that faces up.</param>
internal sealed record AimUp(int Node, Vector3? Axis, Quaternion FromRest);
