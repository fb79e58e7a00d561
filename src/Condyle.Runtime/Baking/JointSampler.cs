using System.Globalization;

namespace Condyle.Runtime.Baking;

/// <summary>What sampling gave: the tracks with a value at every time, the way that was taken off, and the weights of morph targets.</summary>
internal sealed record Samples(IReadOnlyList<BakedTrack> Tracks, RootTravel? Travel, IReadOnlyList<float[]> Morphs);

/// <summary>Reads the exported joints' channels off the live motion.</summary>
internal sealed class JointSampler(LiveMotion live, IReadOnlyList<JointRest> rest, bool loops, BakeWork work)
{
    /// <summary>Sampling is half of a bake's work, the proof the other half.</summary>
    private const double Share = 0.5;

    private readonly double[] units = JointRest.Units(live.Rig, rest);

    public Samples Sample(FrameTimes times)
    {
        JointSamples[] samples = [.. live.Rig.Joints.Select(joint => new JointSamples(joint.Index, times.Times.Length, rest[joint.Index], (float)units[joint.Index]))];
        var travel = live.Travel is { IsTakenOff: true } ? new TravelSamples(times.Times.Length) : null;
        float[][] morphs = [.. live.Rig.Morphs.Select(_ => new float[times.Times.Length])];
        var ends = new LoopEnds(live.Rig);
        live.PlayTogether(times.Times.Select(time => (double)time), (first, block) =>
        {
            work.Tick(0, Share, first + block.Count, times.Times.Length);
            for (var joint = 0; joint < samples.Length; joint++)
            {
                if (!samples[joint].TryTake(first, block.Count, block.Channels(joint)))
                    throw NotFinite(joint, first + block.FirstNotFinite(joint), times);
            }

            for (var moment = 0; moment < block.Count; moment++)
            {
                travel?.Take(first + moment, block[moment].Way);
                for (var morph = 0; morph < morphs.Length; morph++)
                    morphs[morph][first + moment] = block[moment].Live.MorphWeight(morph);
            }

            if (loops && first == 0)
                ends.Begin(block[0]);
            if (loops && first + block.Count == times.Times.Length)
                ends.End(block[block.Count - 1], live.Clip);
        });
        if (loops)
        {
            foreach (var joint in samples)
                joint.Close();
            foreach (var morph in morphs)
                morph[^1] = morph[0];
        }

        List<BakedTrack> tracks = [.. samples.Select(joint => joint.ToTrack()).Where(track => track is not (_, null, null, null))];
        return new Samples(tracks.Count > 0 ? tracks : [samples[0].ToStillTrack()], travel?.ToTravel(), morphs);
    }

    private BadInputException NotFinite(int joint, int frame, FrameTimes times) => live.Clip.Wrong(
        string.Create(CultureInfo.InvariantCulture, $"gets a value that is no finite number on frame {frame}"),
        "Look at what drives the joint there",
        live.Rig.Joints[joint].Name,
        times.InClip(times.Times[frame]));
}
