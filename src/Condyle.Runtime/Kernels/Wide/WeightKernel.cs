using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Weights from switches and options: each is a sum of terms, each term a coefficient times switches and options.</summary>
internal static class WeightKernel
{
    public static void Run(WeightBatch batch, Buffers pose)
    {
        var (term, factor) = (0, 0);
        for (var i = 0; i < batch.Slots.Length; i++)
        {
            var sum = Lane.Zero;
            for (; term < batch.TermEnds[i]; term++)
            {
                var product = Lanes.Create(batch.Coefficients[term]);
                for (; factor < batch.FactorEnds[term]; factor++)
                    product *= pose.Inputs.Wide(batch.Factors[factor]);
                sum += product;
            }

            pose.Weights.Set(batch.Slots[i], sum);
        }
    }
}
