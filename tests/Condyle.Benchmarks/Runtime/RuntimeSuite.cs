using Condyle.Benchmarks.Measuring;

namespace Condyle.Benchmarks.Runtime;

/// <summary>All goals of the runtime, part by part.</summary>
internal static class RuntimeSuite
{
    public static Dictionary<string, Func<IEnumerable<Result>>> Parts { get; } = new()
    {
        ["evaluation"] = Evaluation.Measure,
    };
}
