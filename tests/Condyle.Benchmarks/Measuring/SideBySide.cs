namespace Condyle.Benchmarks.Measuring;

/// <summary>Something to time: what is made ready untimed, then the work itself.</summary>
internal delegate Action Prepare();

/// <summary>
/// Times several ways to do something in turns, in one process: the machine is shared and its speed drifts, so that only the ratios of turns that lie
/// side by side mean anything.
/// </summary>
internal sealed class SideBySide
{
    private readonly double[][] seconds;

    private SideBySide(double[][] seconds) => this.seconds = seconds;

    /// <param name="warmUp">Rounds that don't count.</param>
    /// <param name="rounds">Rounds that count.</param>
    /// <param name="settles">Whether the heap is cleaned before each turn: right for long ones.</param>
    /// <param name="ways">What is timed.</param>
    public static SideBySide Run(int warmUp, int rounds, bool settles, params Prepare[] ways)
    {
        var seconds = ways.Select(_ => new double[rounds]).ToArray();
        for (var round = -warmUp; round < rounds; round++)
        {
            for (var turn = 0; turn < ways.Length; turn++)
            {
                // Each way is first, last and in the middle as often as the others.
                var way = (turn + round + warmUp) % ways.Length;
                var time = Time(ways[way], settles);
                if (round >= 0)
                    seconds[way][round] = time;
            }
        }

        return new SideBySide(seconds);
    }

    /// <summary>The median time of a way.</summary>
    public double Seconds(int way) => Median(seconds[way]);

    /// <summary>The shortest time of a way.</summary>
    public double Fastest(int way) => seconds[way].Min();

    /// <summary>How many times as long one way takes as another one: the median over the rounds.</summary>
    public double Ratio(int way, int over) => Median([.. seconds[way].Zip(seconds[over], (a, b) => a / b)]);

    public static double Median(double[] values)
    {
        var sorted = values.Order().ToArray();
        var middle = sorted.Length / 2;
        return sorted.Length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    private static double Time(Prepare way, bool settles)
    {
        var work = way();
        if (settles)
            Memory.Settle();
        var start = ThreadClock.Seconds();
        work();
        return ThreadClock.Seconds() - start;
    }
}
