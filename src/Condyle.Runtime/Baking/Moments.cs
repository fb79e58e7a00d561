namespace Condyle.Runtime.Baking;

/// <summary>What a moment is looked at for.</summary>
[Flags]
internal enum MomentKind
{
    OnFrame = 1,
    Midway = 2,
    AtRandom = 4,
    AroundChange = 8,
}

/// <summary>A time at which baked motion is compared with live motion.</summary>
/// <param name="Time">Seconds of the bake.</param>
/// <param name="Kind">Why it is looked at.</param>
/// <param name="Frame">The sample at or before it.</param>
/// <param name="Amount">How far on to the next sample.</param>
internal readonly record struct Moment(float Time, MomentKind Kind, int Frame, double Amount);

/// <summary>
/// The moments of a comparison: every sample, the middle between it and the next, a thousand times drawn at random (always the same ones), and eight each
/// in the frame before and the frame after every change of a switch or choice.
/// </summary>
internal static class Moments
{
    private const int AtRandom = 1000, Seed = 1789, AroundChange = 8;

    /// <summary>In order; only the moments beside the samples and their middles are held.</summary>
    public static IEnumerable<Moment> Of(FrameTimes times, Clip clip, double frame)
    {
        var extra = Extra(times, clip, frame);
        var next = 0;
        for (var at = 0; at < times.Times.Length; at++)
        {
            var from = times.Times[at];
            for (; next < extra.Count && extra[next].Time <= from; next++)
            {
                // It falls onto a sample, which is looked at anyway.
            }

            yield return new Moment(from, MomentKind.OnFrame, at, 0);
            if (at + 1 == times.Times.Length)
                yield break;
            var to = times.Times[at + 1];
            var length = (double)to - from;
            var middle = (float)((from + (double)to) / 2);
            var hasMiddle = middle > from && middle < to;
            for (; next < extra.Count && extra[next].Time < to; next++)
            {
                var (time, kind) = extra[next];
                if (hasMiddle && middle <= time)
                {
                    yield return Middle();
                    hasMiddle = false;
                }

                yield return new Moment(time, kind, at, (time - from) / length);
            }

            if (hasMiddle)
                yield return Middle();

            Moment Middle() => new(middle, MomentKind.Midway, at, (middle - (double)from) / length);
        }
    }

    private static List<(float Time, MomentKind Kind)> Extra(FrameTimes times, Clip clip, double frame)
    {
        var random = new Random(Seed);
        var moments = new List<(float Time, MomentKind Kind)>();
        for (var i = 0; i < AtRandom; i++)
            moments.Add(((float)(random.NextDouble() * times.End), MomentKind.AtRandom));
        foreach (var change in ClipMoments.Changes(clip))
        {
            for (var step = 0; step < 2 * AroundChange; step++)
            {
                var time = change - times.From + (frame * ((step + 0.5 - AroundChange) / AroundChange));
                if (time > 0 && time < times.End)
                    moments.Add(((float)time, MomentKind.AroundChange));
            }
        }

        moments.Sort((a, b) => a.Time.CompareTo(b.Time));
        return moments;
    }
}
