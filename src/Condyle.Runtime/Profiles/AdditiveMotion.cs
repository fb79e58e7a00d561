using System.Numerics;
using Condyle.Runtime.Baking;

namespace Condyle.Runtime.Profiles;

/// <summary>Makes motion the difference from a pose: translations are subtracted, rotations taken off on the left, scales divided. What is read linearly between keys stays so.</summary>
internal static class AdditiveMotion
{
    public static IReadOnlyList<BakedTrack> Of(EngineProfile profile, BakedClip clip, CompiledRig rig, IReadOnlyList<JointRest> rest)
    {
        if (profile.Additive is not { } reference)
            return clip.Tracks;
        float[] times = [.. clip.Times];
        var (frame, amount) = (0, 0.0);
        if (reference.At is { } at)
        {
            if (!(at >= 0 && at <= times[^1]))
                throw profile.Wrong(FormattableString.Invariant($"its additive reference at {at} s lies outside the clip '{clip.Name}', which lasts {times[^1]:0.####} s"), "Give a time within it");
            frame = Array.BinarySearch(times, at) is var found && found >= 0 ? found : ~found - 1;
            amount = frame + 1 < times.Length ? ((double)at - times[frame]) / ((double)times[frame + 1] - times[frame]) : 0;
        }

        var pose = new Playback(rig, rest, reference.At is null ? [] : clip.Tracks, times);
        return [.. clip.Tracks.Select(track =>
        {
            var (t, r, s) = pose.Local(track.Joint, frame, amount);
            var (move, back, scale) = (new Vector3((float)t.X, (float)t.Y, (float)t.Z), r.Inverse.ToSingle(), new Vector3((float)s.X, (float)s.Y, (float)s.Z));
            if (track.Scales is not null && (scale.X == 0 || scale.Y == 0 || scale.Z == 0))
                throw profile.Wrong($"the joint '{rig.Joints[track.Joint].Name}' has a scale of zero in the reference pose, so there is no difference from it", "Take another reference");
            return track with
            {
                Translations = track.Translations is { } moves ? Array.ConvertAll(moves, value => value - move) : null,
                Rotations = track.Rotations is { } turns ? Array.ConvertAll(turns, value => Quaternion.Normalize(back * value)) : null,
                Scales = track.Scales is { } scales ? Array.ConvertAll(scales, value => value / scale) : null,
            };
        })];
    }
}
