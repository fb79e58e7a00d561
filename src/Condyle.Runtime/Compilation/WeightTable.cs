using Condyle.Model;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Compilation;

/// <summary>
/// Gives equal weights one slot, so that an inverse asked for twice is worked out once. A switch alone has its input's slot; constants are slots that nothing writes.
/// </summary>
internal sealed class WeightTable(InputTable inputs)
{
    private readonly Dictionary<WeightPolynomial, int> slots = [];
    private readonly List<WeightPolynomial> weights = [];

    public int Count => weights.Count;

    public int SlotOf(WeightPolynomial weight)
    {
        if (weight.Terms is [{ Coefficient: 1, Factors: [var id] }])
            return inputs.SlotOf(id);
        if (!slots.TryGetValue(weight, out var slot))
        {
            slots[weight] = slot = inputs.AtRest.Count + weights.Count;
            weights.Add(weight);
        }

        return slot;
    }

    public void FoldConstants(Buffers pose)
    {
        foreach (var weight in weights.Where(IsConstant))
            pose.Weights[SlotOf(weight)] = (float)weight.At(_ => 0);
    }

    /// <summary>Whether two weights add up to one, and neither is ever below zero: one is a part of a product of switches, the other the rest.</summary>
    public static bool AreWhole(WeightPolynomial a, WeightPolynomial b) => b.Equals(a.Inverse) && (IsPart(a) || IsPart(b));

    /// <summary>The batches of the weights that switches and choices change.</summary>
    public IEnumerable<Batch> ToBatches()
    {
        var changing = weights.Where(weight => !IsConstant(weight)).ToLookup(IsLinear);
        if (changing[true].Any())
            yield return new LinearWeightBatch { Items = [.. changing[true].Select(Linear)] };
        if (changing[false].Any())
            yield return Products([.. changing[false]]);
    }

    private LinearWeight Linear(WeightPolynomial weight) => new(
        SlotOf(weight),
        inputs.SlotOf(weight.Terms.Single(term => term.Factors.Length == 1).Factors[0]),
        (float)weight.Terms.Where(term => term.Factors.Length == 0).Sum(term => term.Coefficient),
        (float)weight.Terms.Single(term => term.Factors.Length == 1).Coefficient);

    private WeightBatch Products(IReadOnlyList<WeightPolynomial> changing)
    {
        var terms = changing.SelectMany(weight => weight.Terms).ToList();
        return new WeightBatch
        {
            Slots = [.. changing.Select(SlotOf)],
            TermEnds = Ends(changing.Select(weight => weight.Terms.Count)),
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
