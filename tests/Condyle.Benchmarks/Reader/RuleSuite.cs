using Condyle.Benchmarks.Measuring;

namespace Condyle.Benchmarks.Reader;

/// <summary>All goals of the rules, part by part.</summary>
internal static class RuleSuite
{
    public static Dictionary<string, Func<IEnumerable<Result>>> Parts { get; } = new()
    {
        ["share"] = () => [RuleShare.Measure(rigs: 200, rounds: 7)],
        ["growth"] = Growth.OfRules,
    };
}
