namespace Condyle.Runtime.Baking;

/// <summary>Takes more samples where motion between two of them is off by more than a bound, and again, until it holds or they lie as close as they may.</summary>
internal static class FinerSampling
{
    /// <summary>Each round halves the gaps: after these a frame has its most samples.</summary>
    private const int Rounds = 14;

    public static (FrameTimes Times, Samples Samples) Run(
        LiveMotion live, IReadOnlyList<JointRest> rest, BakeSettings settings, BakeTolerance bound, FrameTimes times, JointSampler sampler, Samples samples)
    {
        float[] kinks = [.. ClipMoments.Keys(live.Clip).Select(key => key - times.From).Where(key => key > 0 && key < times.End)];
        for (var round = 0; round < Rounds; round++)
        {
            var coarse = Coarse(live, rest, settings, bound, times, samples.Tracks);
            if (!coarse.Contains(true) || times.Finer(live.Clip, settings, coarse, kinks) is not { } finer)
                break;
            (times, samples) = (finer, sampler.Sample(finer));
        }

        return (times, samples);
    }

    private static bool[] Coarse(LiveMotion live, IReadOnlyList<JointRest> rest, BakeSettings settings, BakeTolerance bound, FrameTimes times, IReadOnlyList<BakedTrack> tracks)
    {
        var coarse = new bool[times.Times.Length - 1];
        BakeProof.Compare(live, rest, times, tracks, settings, (moment, _, off) =>
        {
            if (moment.Kind != MomentKind.OnFrame && (off.Metres > bound.Metres || off.Degrees > bound.Degrees))
                coarse[moment.Frame] = true;
        });
        return coarse;
    }
}
