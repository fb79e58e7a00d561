using Condyle.Model;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Compilation;

/// <summary>Gives equal weights one slot, so that an inverse asked for twice is worked out once. Constants are slots that nothing writes.</summary>
internal sealed class WeightTable(InputTable inputs)
{
    private readonly Dictionary<WeightPolynomial, int> slots = [];
    private readonly List<WeightPolynomial> weights = [];

    public int Count => weights.Count;

    public int SlotOf(WeightPolynomial weight)
    {
        if (!slots.TryGetValue(weight, out var slot))
        {
            slots[weight] = slot = weights.Count;
            weights.Add(weight);
        }

        return slot;
    }

    public void FoldConstants(Buffers pose)
    {
        for (var slot = 0; slot < weights.Count; slot++)
        {
            if (IsConstant(weights[slot]))
                pose.Weights[slot] = (float)weights[slot].At(_ => 0);
        }
    }

    /// <summary>Whether two weights add up to one, and neither is ever below zero: one is a part of a product of switches, the other the rest.</summary>
    public static bool AreWhole(WeightPolynomial a, WeightPolynomial b) => b.Equals(a.Inverse) && (IsPart(a) || IsPart(b));

    /// <summary>The batches of the weights that switches and choices change.</summary>
    public IEnumerable<Batch> ToBatches()
    {
        var changing = Enumerable.Range(0, weights.Count).Where(slot => !IsConstant(weights[slot])).ToLookup(slot => IsLinear(weights[slot]));
        if (changing[true].Any())
            yield return new LinearWeightBatch { Items = [.. changing[true].Select(Linear)] };
        if (changing[false].Any())
            yield return Products([.. changing[false]]);
    }

    private LinearWeight Linear(int slot)
    {
        var terms = weights[slot].Terms;
        return new(
            slot,
            inputs.SlotOf(terms.Single(term => term.Factors.Length == 1).Factors[0]),
            (float)terms.Where(term => term.Factors.Length == 0).Sum(term => term.Coefficient),
            (float)terms.Single(term => term.Factors.Length == 1).Coefficient);
    }

    private WeightBatch Products(int[] changing)
    {
        var terms = changing.SelectMany(slot => weights[slot].Terms).ToList();
        return new WeightBatch
        {
            Slots = changing,
            TermEnds = Ends(changing.Select(slot => weights[slot].Terms.Count)),
            Coefficients = [.. terms.Select(term => (float)term.Coefficient)],
            FactorEnds = Ends(terms.Select(term => term.Factors.Length)),
            Factors = [.. terms.SelectMany(term => term.Factors).Select(inputs.SlotOf)],
        };
    }

    private static bool IsLinear(WeightPolynomial weight) => weight.Terms.Count(term => term.Factors.Length == 1) == 1 && weight.Terms.All(term => term.Factors.Length <= 1);

    private static bool IsPart(WeightPolynomial weight) => weight.Terms is [{ Coefficient: >= 0 and <= 1 }];

    private static bool IsConstant(WeightPolynomial weight) => weight.Switches.Count == 0;

    private static int[] Ends(IEnumerable<int> lengths)
    {
        var end = 0;
        return [.. lengths.Select(length => end += length)];
    }
}
