using Condyle.Runtime.Baking;

namespace Condyle.Runtime;

/// <summary>Turns live motion into samples of the exported joints' own channels, and proves that they play back to the live motion.</summary>
public static class Bake
{
    /// <summary>Bakes a clip.</summary>
    /// <param name="rig">The rig that the clip moves.</param>
    /// <param name="clip">The motion.</param>
    /// <param name="settings">The frame rate and so on; defaults when null.</param>
    /// <param name="progress">Told about a hundred times how far the bake is.</param>
    /// <param name="cancellation">Stops the bake between frames.</param>
    /// <returns>The samples, with the report that compares them with the live motion.</returns>
    /// <exception cref="BadInputException">
    /// The clip is empty or doesn't fit the rig, a setting is out of range, a loop doesn't close, an exported joint is driven by matrix or gets a value that is no finite number.
    /// </exception>
    public static BakedClip Run(CompiledRig rig, Clip clip, BakeSettings? settings = null, IProgress<BakeProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(clip);
        return Run(new ClipPlayer(rig, clip), JointRest.Of(rig), settings ?? new BakeSettings(), progress, cancellation);
    }

    /// <summary>Bakes for a file whose joints rest so.</summary>
    internal static BakedClip Run(ClipPlayer player, IReadOnlyList<JointRest> rest, BakeSettings settings, IProgress<BakeProgress>? progress, CancellationToken cancellation)
    {
        CheckBakeable(player.Rig);
        var times = FrameTimes.Of(player.Clip, settings);
        var live = new LiveMotion(player, Travel.Of(player.Rig, settings.RootMotion), times.From, cancellation);
        var work = new BakeWork(player.Clip.Name, progress);
        var sampler = new JointSampler(live, rest, settings.Loop, work);
        var samples = sampler.Sample(times);
        if (settings.Between is { } bound)
            (times, samples) = FinerSampling.Run(live, rest, settings, bound, times, sampler, samples);
        var tracks = samples.Tracks;
        if (settings.Keys is { } tolerance)
            tracks = KeyReducer.Reduce(player.Rig, rest, times.Times, tracks, BakeProof.Left(live, rest, times, tracks, tolerance), cancellation);
        var report = BakeProof.Run(live, rest, times, samples.Tracks, tracks, settings, work);
        return new BakedClip(player.Clip.Name, times.Times, tracks, report)
        {
            Travel = samples.Travel,
            Morphs = samples.Morphs,
            Markers = [.. player.Clip.Markers
                .Where(marker => marker.At >= times.From && marker.At <= times.InClip(times.End))
                .Select(marker => marker with { At = marker.At - times.From })],
        };
    }

    /// <summary>A rig whose exported joints follow by matrix can't be baked: a player reads their channels, and nothing of the motion is there.</summary>
    internal static void CheckBakeable(CompiledRig rig)
    {
        if (rig.Joints.Count == 0)
            throw new BadInputException($"rig '{rig.Name}'", "it has no exported joint, so there is nothing to bake", "Declare its skeleton");
        var held = rig.Joints.Where(joint => rig.JointsHeldByMatrix.Contains(joint.Index)).Select(joint => $"'{joint.Name}'").ToList();
        if (held.Count > 0)
        {
            throw new BadInputException(
                $"rig '{rig.Name}'",
                $"{(held.Count == 1 ? "the exported joint" : "the exported joints")} {string.Join(", ", held)} {(held.Count == 1 ? "follows" : "follow")} by matrix, and an engine reads a joint's own translation, rotation and scale, so the motion would be lost (CDY3001)",
                "Drive by channels");
        }
    }
}
