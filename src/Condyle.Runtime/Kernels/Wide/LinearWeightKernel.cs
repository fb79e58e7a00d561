using System.Runtime.CompilerServices;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Weights of one switch or option: constant + factor · switch.</summary>
internal static class LinearWeightKernel
{
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Run(LinearWeightBatch batch, Buffers pose)
    {
        var inputs = pose.Inputs.Registers;
        var weights = pose.Weights.Registers;
        foreach (ref readonly var item in batch.Items.AsSpan())
            weights[item.Weight] = Lanes.FusedMultiplyAdd(Lanes.Create(item.Factor), inputs[item.Input], Lanes.Create(item.Constant));
    }
}
