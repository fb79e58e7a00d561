using System.Globalization;

namespace Condyle.Runtime.Baking;

/// <summary>When a clip is sampled: at whole frames from the start of the range and between them as asked for, and at its end.</summary>
/// <param name="From">Where in the clip it begins.</param>
/// <param name="Times">From zero up.</param>
internal sealed record FrameTimes(float From, float[] Times)
{
    /// <summary>A range is meant to be whole frames when it is this close, in frames.</summary>
    private const double WholeFrame = 1e-3;

    /// <summary>How many samples are taken of a frame at most where the motion needs them: a limb that is pulled straight has no speed limit.</summary>
    private const int Finest = 8192;

    public float End => Times[^1];

    /// <summary>The time in the clip that a time of the bake stands for.</summary>
    public float InClip(double time) => (float)(From + time);

    public static FrameTimes Of(Clip clip, BakeSettings settings)
    {
        var (from, to) = (settings.From, settings.To ?? clip.Seconds);
        if (!(from >= 0 && from < to && to <= clip.Seconds))
        {
            throw clip.Wrong(
                string.Create(CultureInfo.InvariantCulture, $"can't be baked from {from:0.####} to {to:0.####} s"),
                string.Create(CultureInfo.InvariantCulture, $"It lasts from 0 to {clip.Seconds:0.####} s: give a range within it"));
        }

        settings.Check((problem, remedy) => clip.Wrong(problem, remedy));
        return new FrameTimes(from, Grid(clip, to - (double)from, settings.FramesPerSecond * (double)settings.SubFrames, settings));
    }

    /// <summary>The same with more samples in some of the gaps between two of them: at the clip's own keys there, on both sides of a step, else halfway.</summary>
    /// <param name="clip">The clip.</param>
    /// <param name="settings">How it is baked.</param>
    /// <param name="coarse">For each gap whether it needs more.</param>
    /// <param name="kinks">The times of the bake at which the clip has keys, in order.</param>
    /// <returns>The finer times; null when none can be added.</returns>
    public FrameTimes? Finer(Clip clip, BakeSettings settings, bool[] coarse, float[] kinks)
    {
        var least = 1 / ((double)settings.FramesPerSecond * Finest);
        var finer = new List<float>(Times.Length + coarse.Count(gap => gap));
        for (var gap = 0; gap + 1 < Times.Length; gap++)
        {
            finer.Add(Times[gap]);
            if (coarse[gap])
                finer.AddRange(Within(Times[gap], Times[gap + 1], kinks, least));
        }

        finer.Add(Times[^1]);
        if (finer.Count > BakeSettings.MostFrames)
            throw TooMany(clip, finer.Count, settings);
        return finer.Count == Times.Length ? null : this with { Times = [.. finer] };
    }

    private static IEnumerable<float> Within(float from, float to, float[] kinks, double least)
    {
        var first = Array.BinarySearch(kinks, from) is var at && at >= 0 ? at + 1 : ~at;
        var here = new List<float>();
        for (; first < kinks.Length && kinks[first] < to; first++)
        {
            if (MathF.BitDecrement(kinks[first]) is var before && before > (here.Count > 0 ? here[^1] : from))
                here.Add(before);
            here.Add(kinks[first]);
        }

        return here.Count > 0 ? here : to - (double)from > least ? [(float)((from + (double)to) / 2)] : [];
    }

    private static float[] Grid(Clip clip, double seconds, double rate, BakeSettings settings)
    {
        var length = seconds * rate;
        if (length >= BakeSettings.MostFrames)
            throw TooMany(clip, length, settings);
        var whole = (int)Math.Floor(length + WholeFrame);
        var ends = length - whole > WholeFrame || whole == 0;
        var times = new float[whole + (ends ? 2 : 1)];
        for (var frame = 0; frame < times.Length; frame++)
            times[frame] = (float)(frame / rate);
        times[^1] = (float)seconds;

        // So late in a clip that a float can't tell the last frame from the end, they are one.
        return times.Length > 2 && times[^2] >= times[^1] ? [.. times[..^2], times[^1]] : times;
    }

    private static BadInputException TooMany(Clip clip, double frames, BakeSettings settings) => clip.Wrong(
        string.Create(CultureInfo.InvariantCulture, $"would have {frames:0} frames at {settings.FramesPerSecond} frames per second, more than {BakeSettings.MostFrames}"),
        "Bake it in parts, or at a lower frame rate");
}
