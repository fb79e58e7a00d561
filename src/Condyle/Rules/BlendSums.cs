using Condyle.Model;

namespace Condyle.Rules;

/// <summary>What the weights of blends add up to. Many rules ask: of a blend whose weights don't make one, that is what is to be told.</summary>
internal sealed class BlendSums
{
    private readonly Dictionary<RigBlend, WeightPolynomial?> sums = [];

    /// <summary>The sum of a blend's weights; none where it isn't known.</summary>
    public WeightPolynomial? Of(RigBlend blend)
    {
        if (!sums.TryGetValue(blend, out var sum))
            sums[blend] = sum = SumOf(blend);
        return sum;
    }

    /// <summary>Whether the weights of a blend are known to add up to one.</summary>
    public bool IsOne(RigBlend blend) => Of(blend) is { } sum && sum.Equals(WeightPolynomial.One);

    private static WeightPolynomial? SumOf(RigBlend blend)
    {
        var sum = WeightPolynomial.Zero;
        foreach (var source in blend.Sources)
        {
            if (!source.Weight.TryKnown(out var weight))
                return null;
            sum += weight;
        }

        return sum.IsTooLarge ? null : sum;
    }
}
