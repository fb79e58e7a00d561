using System.Globalization;
using System.Numerics;
using Condyle.Runtime.Baking;

namespace Condyle.Runtime;

/// <summary>Turns live motion into samples of the exported joints' own channels, and proves that they play back to the live motion.</summary>
public static class Bake
{
    /// <summary>How many times progress is reported in a bake.</summary>
    private const int ProgressSteps = 100;

    /// <summary>How many frames are evaluated together.</summary>
    private const int Together = 64;

    private const double AllowedMetres = 2e-5, AllowedDegrees = 0.002;

    /// <summary>Up to this distance from the origin, in metres, <see cref="AllowedMetres"/> holds; beyond it, it grows in proportion, as a float's rounding does.</summary>
    private const double Near = 2;

    /// <summary>Bakes a clip.</summary>
    /// <param name="rig">The rig that the clip moves.</param>
    /// <param name="clip">The motion.</param>
    /// <param name="settings">The frame rate and so on; defaults when null.</param>
    /// <param name="progress">Told about a hundred times how far the bake is.</param>
    /// <param name="cancellation">Stops the bake between frames.</param>
    /// <returns>The samples, with the report that compares them with the live motion.</returns>
    /// <exception cref="BadInputException">
    /// The clip is empty or doesn't fit the rig, the frame rate is out of range, an exported joint is driven by matrix or gets a value that is no finite number.
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
        var step = Math.Max(1, 2 * times.Length / ProgressSteps);
        var tracks = Sample(player, times, rest, Tick);
        return new BakedClip(player.Clip.Name, times, tracks, Compare(player, times, rest, tracks, settings, frame => Tick(times.Length + frame)));

        void Tick(int work)
        {
            cancellation.ThrowIfCancellationRequested();
            if (work % step == 0 || work == (2 * times.Length) - 1)
                progress?.Report(new BakeProgress(player.Clip.Name, (work + 1) / (2.0 * times.Length)));
        }
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
                $"{(held.Count == 1 ? "the exported joint" : "the exported joints")} {string.Join(", ", held)} {(held.Count == 1 ? "follows" : "follow")} by matrix, and an engine reads a joint's own translation, rotation and scale, so the motion would be lost",
                "Drive by channels");
        }
    }

    private static List<BakedTrack> Sample(ClipPlayer player, float[] times, IReadOnlyList<JointRest> rest, Action<int> tick)
    {
        var live = player.Rig.NewCrowd(Math.Min(Together, times.Length));
        JointSamples[] samples = [.. player.Rig.Joints.Select(joint => new JointSamples(joint, times.Length))];
        for (var first = 0; first < times.Length; first += live.Count)
        {
            var count = Math.Min(live.Count, times.Length - first);
            for (var member = 0; member < count; member++)
                player.Pose(live[member], times[first + member]);
            live.Evaluate();
            for (var member = 0; member < count; member++)
            {
                tick(first + member);
                Take(samples, live[member], first + member, player, times);
            }
        }

        var units = Units(player.Rig, rest);
        var tracks = samples.Select((joint, index) => joint.ToTrack(rest[index], units[index])).Where(track => track is not (_, null, null, null)).ToList();
        return tracks.Count > 0 ? tracks : [samples[0].ToStillTrack()];
    }

    private static void Take(JointSamples[] samples, RigInstance live, int frame, ClipPlayer player, float[] times)
    {
        foreach (var joint in player.Rig.Joints)
        {
            if (!samples[joint.Index].TryTake(live, frame))
            {
                throw player.Clip.Wrong(
                    string.Create(CultureInfo.InvariantCulture, $"gets a value that is no finite number on frame {frame}"),
                    "Look at what drives the joint there",
                    joint.Name,
                    times[frame]);
            }
        }
    }

    /// <summary>How many metres of the world a unit of each joint's translation is at rest, along the axis that is scaled most.</summary>
    private static float[] Units(CompiledRig rig, IReadOnlyList<JointRest> rest)
    {
        var units = new float[rig.Joints.Count];
        foreach (var joint in rig.Joints)
        {
            units[joint.Index] = 1;
            if (joint.Parent >= 0)
            {
                var scale = Vector3.Abs(rest[joint.Parent].Scale);
                units[joint.Index] = units[joint.Parent] * Math.Max(scale.X, Math.Max(scale.Y, scale.Z));
            }
        }

        return units;
    }

    private static BakeReport Compare(ClipPlayer player, float[] times, IReadOnlyList<JointRest> rest, IReadOnlyList<BakedTrack> tracks, BakeSettings settings, Action<int> tick)
    {
        var rig = player.Rig;
        var live = rig.NewCrowd(Together);
        var playback = new Playback(rig, rest, tracks);
        var (on, between) = (new Comparison(rig), new Comparison(rig));

        // Each frame, and the middle between it and the next: the last one has none.
        var moments = (2 * times.Length) - 1;
        for (var first = 0; first < moments; first += Together)
        {
            var count = Math.Min(Together, moments - first);
            for (var member = 0; member < count; member++)
                player.Pose(live[member], TimeOf(first + member));
            live.Evaluate();
            for (var member = 0; member < count; member++)
                Take(live[member], first + member);
        }

        return new BakeReport(
            player.Clip.Name,
            settings.FramesPerSecond,
            times.Length,
            player.Clip.Seconds,
            on.Largest,
            between.Largest,
            AllowedMetres * Math.Max(1, on.Reach / Near),
            AllowedDegrees,
            [.. rig.Joints.Select(joint => new JointDeviation(joint.Name, on.Of(joint.Index), between.Of(joint.Index)))]);

        float TimeOf(int moment) => moment % 2 == 0 ? times[moment / 2] : (float)(((double)times[moment / 2] + times[(moment / 2) + 1]) / 2);

        void Take(RigInstance member, int moment)
        {
            var (frame, time) = (moment / 2, TimeOf(moment));
            if (moment % 2 == 0)
            {
                tick(frame);
                on.Take(member, playback.At(frame, 0), time);
            }
            else
            {
                between.Take(member, playback.At(frame, ((double)time - times[frame]) / ((double)times[frame + 1] - times[frame])), time);
            }
        }
    }
}
