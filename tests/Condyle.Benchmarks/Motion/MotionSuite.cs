using Condyle.Benchmarks.Measuring;

namespace Condyle.Benchmarks.Motion;

/// <summary>All goals of bakes, part by part.</summary>
internal static class MotionSuite
{
    public static Dictionary<string, Func<IEnumerable<Result>>> Parts { get; } = new()
    {
        ["bake"] = BakeCost.Measure,
        ["memory"] = BakeMemory.Measure,
        ["bytes"] = BakeBytes.Measure,
    };
}
