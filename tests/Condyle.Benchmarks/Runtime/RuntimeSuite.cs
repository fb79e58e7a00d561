using Condyle.Benchmarks.Measuring;

namespace Condyle.Benchmarks.Runtime;

/// <summary>All goals of the runtime, part by part.</summary>
internal static class RuntimeSuite
{
    public static Dictionary<string, Func<IEnumerable<Result>>> Parts { get; } = new()
    {
        ["evaluation"] = Evaluation.Measure,
        ["streaming"] = Streaming.Measure,
        ["growth"] = RigGrowth.Measure,
        ["rigs"] = Rigs.Measure,
        ["accuracy"] = Accuracy.Measure,
        ["outside"] = OutsideHierarchy.Measure,
    };
}
