namespace Condyle.Runtime.Kernels;

/// <summary>Weights from switches and options: each is a sum of terms, each term a coefficient times switches and options.</summary>
/// <remarks>A product of inverses is written out here, and its terms cancel where it is near zero: to within a float's rounding of one.</remarks>
internal sealed class WeightBatch : Batch
{
    public required int[] Slots { get; init; }

    /// <summary>For each weight, the end of its stretch of terms.</summary>
    public required int[] TermEnds { get; init; }

    public required float[] Coefficients { get; init; }

    /// <summary>For each term, the end of its stretch of factors.</summary>
    public required int[] FactorEnds { get; init; }

    /// <summary>The input of each factor.</summary>
    public required int[] Factors { get; init; }

    protected override void RunOne(Buffers pose) => One.WeightKernel.Run(this, pose);

    protected override void RunEight(Buffers pose) => Eight.WeightKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.WeightKernel.Run(this, pose);
}
