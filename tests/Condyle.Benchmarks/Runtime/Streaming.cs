using System.Diagnostics;
using Condyle.Benchmarks.Measuring;
using Condyle.Runtime;

namespace Condyle.Benchmarks.Runtime;

/// <summary>The frames of a long bake side by side: far more than a cache holds, so they stream from memory and back; by one thread and by two.</summary>
internal static class Streaming
{
    private const int Frames = 10_000;
    private const int Rounds = 31;

    public static IEnumerable<Result> Measure()
    {
        var written = new HandWritten();
        YardstickMotion.Set(written, 1);
        var frames = RigCompiler.Compile(Rig.Examine(new Yardstick())).NewCrowd(Frames);
        for (var frame = 0; frame < Frames; frame++)
            YardstickMotion.Set(frames[frame], frame);

        const int Repeats = Frames / 20;
        Evaluation.WarmUp(written.Evaluate, frames.Evaluate);
        var times = SideBySide.Run(
            warmUp: 1,
            Rounds,
            settles: false,
            () => () => Evaluation.Repeat(Repeats, written.Evaluate),
            () => frames.Evaluate);
        yield return new(
            "a frame of 10 000 that stream through the lanes, against one by hand",
            times.Ratio(1, 0) * Repeats / Frames,
            RuntimeGoals.Streaming,
            FormattableString.Invariant($"by hand {times.Seconds(0) * 1e9 / Repeats:0} ns, streaming {times.Seconds(1) * 1e9 / Frames:0} ns"));

        // Two threads can only be timed by the clock on the wall; the best of many rounds is nearest to a quiet machine.
        var (one, two) = (double.PositiveInfinity, double.PositiveInfinity);
        for (var round = 0; round < 2 * Rounds; round++)
        {
            one = Math.Min(one, Time(frames.Evaluate));
            two = Math.Min(two, Time(() => frames.Evaluate(threads: 2)));
        }

        yield return new(
            "two threads, against one",
            two / one,
            RuntimeGoals.TwoThreads,
            FormattableString.Invariant($"{Frames} frames in {one * 1e3:0.0} ms and in {two * 1e3:0.0} ms by the clock on the wall"));
    }

    private static double Time(Action work)
    {
        var start = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(start).TotalSeconds;
    }
}
