namespace Condyle.Runtime.Kernels;

/// <summary>Weights that are a constant and a multiple of one switch or option, as most are: a switch itself, and its inverse.</summary>
internal sealed class LinearWeightBatch : Batch
{
    public required LinearWeight[] Items { get; init; }

    protected override void RunOne(Buffers pose) => One.LinearWeightKernel.Run(this, pose);

    protected override void RunEight(Buffers pose) => Eight.LinearWeightKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.LinearWeightKernel.Run(this, pose);
}

/// <param name="Weight">Where it goes.</param>
/// <param name="Input">Its switch or option.</param>
/// <param name="Constant">What it is at zero.</param>
/// <param name="Factor">By what it grows.</param>
internal readonly record struct LinearWeight(int Weight, int Input, float Constant, float Factor)
{
    public readonly int Weight = Weight;
    public readonly int Input = Input;
    public readonly float Constant = Constant;
    public readonly float Factor = Factor;
}
