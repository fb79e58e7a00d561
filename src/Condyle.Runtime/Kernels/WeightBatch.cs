namespace Condyle.Runtime.Kernels;

/// <summary>Weights from switches: each is a sum of terms, each term a coefficient times switches.</summary>
/// <remarks>In double precision: a product of inverses is written out here, and its terms cancel where it is near zero.</remarks>
internal sealed class WeightBatch : Batch
{
    public required int[] Slots { get; init; }

    /// <summary>For each weight, the end of its stretch of terms.</summary>
    public required int[] TermEnds { get; init; }

    public required double[] Coefficients { get; init; }

    /// <summary>For each term, the end of its stretch of factors.</summary>
    public required int[] FactorEnds { get; init; }

    /// <summary>The switch of each factor.</summary>
    public required int[] Factors { get; init; }

    public override void Run(Buffers pose)
    {
        var (term, factor) = (0, 0);
        for (var i = 0; i < Slots.Length; i++)
        {
            var sum = 0.0;
            for (; term < TermEnds[i]; term++)
            {
                var product = Coefficients[term];
                for (; factor < FactorEnds[term]; factor++)
                    product *= pose.Switches[Factors[factor]];
                sum += product;
            }

            pose.Weights[Slots[i]] = (float)sum;
        }
    }
}
