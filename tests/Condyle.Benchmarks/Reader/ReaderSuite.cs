using Condyle.Benchmarks.Measuring;

namespace Condyle.Benchmarks.Reader;

/// <summary>All goals of the reader, part by part.</summary>
internal static class ReaderSuite
{
    public static Dictionary<string, Func<IEnumerable<Result>>> Parts { get; } = new()
    {
        ["build"] = () => WholeBuild.Measure(rigs: 20, rounds: 15)
            .Concat(WholeBuild.Measure(rigs: 200, rounds: 7))
            .Concat(WholeBuild.Measure(rigs: 2_000, rounds: 3)),
        ["sdk"] = () => [SdkAnalyzers.Measure()],
        ["keystroke"] = Keystrokes.Measure,
        ["growth"] = Growth.OfStages,
        ["memory"] = HeldMemory.Measure,
    };
}
