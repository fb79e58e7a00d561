namespace Condyle.Runtime.Kernels;

/// <summary>
/// Many-bone IK: turns a copy's joints so that its tip is at the goal, its bend faces the pole, and its tip turns with the goal from rest.
/// Positions by FABRIK from the unsolved copy, turned with the plane towards the goal and bowed by what the goal is nearer or further; then the joints' turns from rest.
/// </summary>
internal sealed class ManyBoneBatch : Batch
{
    public required CopyChains Chains { get; init; }

    public required SolverEnds Ends { get; init; }

    /// <summary>How near to the goal each tip must come, as a share of the chain's length.</summary>
    public required float[] Tolerances { get; init; }

    public required int[] Rounds { get; init; }

    /// <summary>How far the bone of each joint may turn from where it rests; empty for a solver without limits.</summary>
    public required BoneCone[][] Cones { get; init; }

    protected override void RunOne(Buffers pose) => One.ManyBoneKernel.Run(this, pose);

    protected override void RunEight(Buffers pose) => Eight.ManyBoneKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.ManyBoneKernel.Run(this, pose);
}

/// <summary>How far a bone may turn from where it rests: cosine and sine of an angle up to a half turn.</summary>
internal readonly record struct BoneCone(float Cosine, float Sine);
