using Condyle.Model;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Compilation;

/// <summary>Gives equal weights one slot, so that an inverse asked for twice is worked out once. Constants are slots that nothing writes.</summary>
internal sealed class WeightTable(IReadOnlyDictionary<int, int> switchIndices)
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

    /// <summary>The weights that switches change; none when no weight does.</summary>
    public WeightBatch? ToBatch()
    {
        var changing = Enumerable.Range(0, weights.Count).Where(slot => !IsConstant(weights[slot])).ToArray();
        if (changing.Length == 0)
            return null;
        var terms = changing.SelectMany(slot => weights[slot].Terms).ToList();
        return new WeightBatch
        {
            Slots = changing,
            TermEnds = Ends(changing.Select(slot => weights[slot].Terms.Count)),
            Coefficients = [.. terms.Select(term => (float)term.Coefficient)],
            FactorEnds = Ends(terms.Select(term => term.Factors.Length)),
            Factors = [.. terms.SelectMany(term => term.Factors).Select(id => switchIndices[id])],
        };
    }

    private static bool IsConstant(WeightPolynomial weight) => weight.Switches.Count == 0;

    private static int[] Ends(IEnumerable<int> lengths)
    {
        var end = 0;
        return [.. lengths.Select(length => end += length)];
    }
}
