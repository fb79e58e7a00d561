using System.Globalization;

namespace Condyle.Runtime.Baking;

/// <summary>When a clip is sampled: at whole frames from its start, and at its end.</summary>
internal static class FrameTimes
{
    /// <summary>A clip's length is meant to be whole frames when it is this close, in frames.</summary>
    private const double WholeFrame = 1e-3;

    public static float[] Of(Clip clip, BakeSettings settings)
    {
        var rate = settings.FramesPerSecond;
        if (!(rate is >= BakeSettings.LeastFramesPerSecond and <= BakeSettings.GreatestFramesPerSecond))
        {
            throw clip.Wrong(
                string.Create(CultureInfo.InvariantCulture, $"can't be baked at {rate} frames per second"),
                string.Create(CultureInfo.InvariantCulture, $"Give a frame rate from {BakeSettings.LeastFramesPerSecond} to {BakeSettings.GreatestFramesPerSecond}"));
        }

        var length = clip.Seconds * (double)rate;
        if (length >= BakeSettings.MostFrames)
        {
            throw clip.Wrong(
                string.Create(CultureInfo.InvariantCulture, $"would have {length:0} frames at {rate} frames per second, more than {BakeSettings.MostFrames}"),
                "Bake it in parts, or at a lower frame rate");
        }

        var whole = (int)Math.Floor(length + WholeFrame);
        var times = Enumerable.Range(0, whole + 1).Select(frame => (float)(frame / (double)rate)).ToList();
        if (length - whole > WholeFrame)
            times.Add(clip.Seconds);
        else if (whole > 0)
            times[whole] = clip.Seconds;
        else
            times.Add(clip.Seconds);
        return [.. times];
    }
}
