using Condyle.Benchmarks.Measuring;

namespace Condyle.Benchmarks.Runtime;

/// <summary>One frame of the yardstick, evaluated in each way, side by side.</summary>
internal static class Evaluation
{
    private const int Rounds = 61;
    private const int Repeats = 400;

    public static IEnumerable<Result> Measure()
    {
        var ways = new YardstickWays();
        var (written, one, eight, sixteen) = (ways.ByHand, ways.One, ways.Eight, ways.Sixteen);
        WarmUp(written.Evaluate, one.Evaluate, eight.Evaluate, sixteen.Evaluate);
        var times = SideBySide.Run(
            warmUp: 1,
            Rounds,
            settles: false,
            () => () => Repeat(Repeats, written.Evaluate),
            () => () => Repeat(Repeats, one.Evaluate),
            () => () => Repeat(Repeats / 4, eight.Evaluate),
            () => () => Repeat(Repeats / 4, sixteen.Evaluate));
        double Nanoseconds(int way, double rigs) => times.Seconds(way) * 1e9 / rigs;
        var hand = Nanoseconds(0, Repeats);
        yield return Of("one rig", 1, 1.0, RuntimeGoals.OneRig);
        yield return Of("8 rigs side by side, one of them", 2, 2.0, RuntimeGoals.EightLanes);
        yield return Of("16 rigs side by side, one of them", 3, 4.0, RuntimeGoals.SixteenLanes);
        yield return new("one rig: bytes allocated in a frame", Memory.AllocatedBy(one.Evaluate), 0, "a frame of the yardstick");

        Result Of(string what, int way, double share, double goal) => new(
            $"{what}, against one by hand",
            times.Ratio(way, 0) / share,
            goal,
            FormattableString.Invariant($"by hand {hand:0} ns, {what} {Nanoseconds(way, Repeats * share):0} ns"));
    }

    public static void Repeat(int times, Action work)
    {
        for (var i = 0; i < times; i++)
            work();
    }

    /// <summary>Runs something until the compiler at run time has done its best with it; it works beside this thread, and on a busy machine it needs time to come to its turn.</summary>
    public static void WarmUp(params ReadOnlySpan<Action> ways)
    {
        for (var turn = 0; turn < 6; turn++)
        {
            Thread.Sleep(TimeSpan.FromSeconds(0.4));
            foreach (var work in ways)
            {
                for (var start = ThreadClock.Seconds(); ThreadClock.Seconds() - start < 0.1;)
                    work();
            }
        }
    }
}
