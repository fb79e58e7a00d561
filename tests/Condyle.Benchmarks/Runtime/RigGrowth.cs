using Condyle.Benchmarks.Measuring;
using Condyle.Runtime;

namespace Condyle.Benchmarks.Runtime;

/// <summary>A hundred yardsticks in one rig, for each node against one.</summary>
internal static class RigGrowth
{
    private const int Copies = 100;
    private const int Rounds = 31;

    public static IEnumerable<Result> Measure()
    {
        var small = RigCompiler.Compile(Rig.Examine(new Yardstick()));
        var large = RigCompiler.Compile(Rig.Examine(new Yardstick(Copies)));
        yield return Of("one rig", small.NewInstance().Evaluate, large.NewInstance().Evaluate, RuntimeGoals.Growth);

        // What sixteen rigs of that size move is more than a cache holds.
        yield return Of("rigs side by side", small.NewCrowd(RigCrowd.Widest).Evaluate, large.NewCrowd(RigCrowd.Widest).Evaluate, goal: null);
    }

    private static Result Of(string what, Action small, Action large, double? goal)
    {
        Evaluation.WarmUp(small, large);
        var times = SideBySide.Run(warmUp: 1, Rounds, settles: false, () => () => Evaluation.Repeat(Copies, small), () => large);
        return new(
            FormattableString.Invariant($"a node of {Copies * Yardstick.Nodes}, against one of {Yardstick.Nodes}: {what}"),
            times.Ratio(1, 0),
            goal,
            FormattableString.Invariant($"{Copies} small ones {times.Seconds(0) * 1e6:0} µs, a large one {times.Seconds(1) * 1e6:0} µs"));
    }
}
