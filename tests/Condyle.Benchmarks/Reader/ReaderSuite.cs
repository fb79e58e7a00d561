using Condyle.Benchmarks.Measuring;

namespace Condyle.Benchmarks.Reader;

/// <summary>All goals of the reader, part by part.</summary>
internal static class ReaderSuite
{
    public static Dictionary<string, Func<IEnumerable<Result>>> Parts { get; } = new()
    {
        ["build"] = () => WholeBuild.Measure(rigs: 20, warmUp: 25, rounds: 15)
            .Concat(WholeBuild.Measure(rigs: 200, warmUp: 2, rounds: 7))
            .Concat(WholeBuild.Measure(rigs: 2_000, warmUp: 0, rounds: 2)),
        ["sdk"] = SdkAnalyzers.Measure,
        ["keystroke"] = Keystrokes.Measure,
        ["growth"] = Growth.OfStages,
        ["memory"] = HeldMemory.Measure,
    };
}
