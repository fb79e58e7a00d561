using Condyle.Model;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>Writes a weight as a rigger would: a switch, its inverse, a product of such, or the inverse of one.</summary>
internal static class SaidWeight
{
    private const int MostSwitches = 4;

    public static string? Of(WeightPolynomial weight, Func<int, string?> expressionOf)
    {
        var switches = weight.Switches;
        if (switches.Count is 0 or > MostSwitches)
            return null;
        for (var inverted = 0; inverted < 1 << switches.Count; inverted++)
        {
            var factors = switches.Select((id, i) => (Id: id, IsInverse: (inverted >> i & 1) == 1)).ToList();
            var product = factors.Aggregate(WeightPolynomial.One, (all, factor) => all * (factor.IsInverse ? WeightPolynomial.Variable(factor.Id).Inverse : WeightPolynomial.Variable(factor.Id)));
            if (!weight.Equals(product) && !weight.Inverse.Equals(product))
                continue;
            var said = factors.Select(factor => expressionOf(factor.Id) is { } expression ? expression + (factor.IsInverse ? ".Inverse" : "") : null).ToList();
            if (said.Contains(null))
                return null;
            var all = string.Join(" * ", said);
            return weight.Equals(product) ? all : said.Count > 1 ? $"({all}).Inverse" : $"{all}.Inverse";
        }

        return null;
    }
}
