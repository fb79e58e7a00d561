using Condyle.Evaluation;

namespace Condyle.Runtime.Baking;

/// <summary>
/// Leaves out keys within a tolerance that holds in the world. Each joint's channels are thinned by a share of it, the more joints hang in a chain and the
/// further they reach, the smaller; then every joint is measured in the world on every sample, and where one is off by more, all joints above it get their keys back there,
/// until none is.
/// </summary>
internal sealed class KeyReducer
{
    /// <summary>In so many rounds a key comes back where a joint is off most; after them wherever it is off.</summary>
    private const int PatientRounds = 24;

    private readonly CompiledRig rig;
    private readonly IReadOnlyList<JointRest> rest;
    private readonly float[] times;
    private readonly ThinnedTrack?[] thinned;
    private readonly IReadOnlyList<BakedTrack> tracks;

    private KeyReducer(CompiledRig rig, IReadOnlyList<JointRest> rest, float[] times, IReadOnlyList<BakedTrack> tracks, BakeTolerance tolerance, CancellationToken cancellation)
    {
        (this.rig, this.rest, this.times, this.tracks) = (rig, rest, times, tracks);
        var shares = ToleranceShares.Of(rig, rest, tolerance);
        thinned = new ThinnedTrack?[rig.Joints.Count];
        foreach (var track in tracks)
        {
            cancellation.ThrowIfCancellationRequested();
            thinned[track.Joint] = new ThinnedTrack(track, times, shares[track.Joint]);
        }
    }

    /// <summary>The tracks with fewer keys.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="rest">Its joints' rest in the file.</param>
    /// <param name="times">The times that the tracks have keys at.</param>
    /// <param name="tracks">With a key at every time.</param>
    /// <param name="tolerance">What may be off for the keys left out alone: what a bake is off for its rounding is taken off it.</param>
    /// <param name="cancellation">Stops it between joints and frames.</param>
    public static IReadOnlyList<BakedTrack> Reduce(CompiledRig rig, IReadOnlyList<JointRest> rest, float[] times, IReadOnlyList<BakedTrack> tracks, BakeTolerance tolerance, CancellationToken cancellation)
    {
        var reducer = new KeyReducer(rig, rest, times, tracks, tolerance, cancellation);
        for (var round = 0; reducer.BringBack(tolerance, everywhere: round >= PatientRounds, cancellation);)
            round++;
        return reducer.Thin();
    }

    /// <summary>Brings keys back where joints are off; false when none is.</summary>
    private bool BringBack(BakeTolerance tolerance, bool everywhere, CancellationToken cancellation)
    {
        var (full, thin) = (new Playback(rig, rest, tracks, times), new Playback(rig, rest, Thin(), times));
        var off = rig.Joints.Select(_ => (Worst: 0.0, At: -1)).ToArray();
        var missing = new List<(int Joint, int Frame)>();
        for (var frame = 0; frame < times.Length; frame++)
        {
            cancellation.ThrowIfCancellationRequested();
            var should = full.At(frame, 0);
            var actual = thin.At(frame, 0);
            for (var joint = 0; joint < off.Length; joint++)
            {
                var share = Share(Off.Between(actual[joint], should[joint]), tolerance);
                if (share > 1 && everywhere)
                    missing.Add((joint, frame));
                else if (share > 1 && share > off[joint].Worst)
                    off[joint] = (share, frame);
                else if (share <= 1)
                    End(joint);
            }
        }

        for (var joint = 0; joint < off.Length; joint++)
            End(joint);
        foreach (var (joint, frame) in missing)
        {
            for (var above = joint; above >= 0; above = rig.Joints[above].Parent)
                thinned[above]?.Keep(frame);
        }

        return missing.Count > 0;

        void End(int joint)
        {
            if (off[joint].At >= 0)
                missing.Add((joint, off[joint].At));
            off[joint] = (0, -1);
        }
    }

    private List<BakedTrack> Thin() => [.. thinned.OfType<ThinnedTrack>().Select(track => track.ToTrack())];

    private static double Share(Off off, BakeTolerance tolerance) => Math.Max(off.Metres / tolerance.Metres, off.Degrees / tolerance.Degrees);
}

/// <summary>How much each joint's own channels may be off, so that what adds up down its chain is likely to stay within a tolerance.</summary>
internal readonly record struct ToleranceShares(double Translation, double Radians, double Scale)
{
    private const double RadiansPerDegree = Math.PI / 180;

    public static ToleranceShares[] Of(CompiledRig rig, IReadOnlyList<JointRest> rest, BakeTolerance tolerance)
    {
        var (reach, below, depth, unit) = (new double[rig.Joints.Count], new int[rig.Joints.Count], new int[rig.Joints.Count], JointRest.Units(rig, rest));
        foreach (var joint in rig.Joints)
            depth[joint.Index] = joint.Parent < 0 ? 1 : depth[joint.Parent] + 1;
        foreach (var joint in rig.Joints.Reverse().Where(joint => joint.Parent >= 0))
        {
            var bone = rest[joint.Index].Translation.Length() * unit[joint.Index];
            reach[joint.Parent] = Math.Max(reach[joint.Parent], reach[joint.Index] + bone);
            below[joint.Parent] = Math.Max(below[joint.Parent], below[joint.Index] + 1);
        }

        // Errors of a chain's joints rarely point the same way; where they do, keys come back.
        return [.. rig.Joints.Select(joint => joint.Index).Select(joint =>
        {
            var share = 1 / Math.Sqrt(depth[joint] + below[joint]);
            var turn = reach[joint] > 0 ? tolerance.Metres / reach[joint] : double.PositiveInfinity;
            return new ToleranceShares(share * tolerance.Metres / unit[joint], share * Math.Min(turn, tolerance.Degrees * RadiansPerDegree), share * Math.Min(turn, tolerance.Metres));
        })];
    }
}

/// <summary>A joint's track with some of its keys left out.</summary>
internal sealed class ThinnedTrack(BakedTrack track, float[] times, ToleranceShares shares)
{
    private readonly bool[]? moves = track.Translations is { } moves
        ? Thinning.Keep(times, (from, to, frame, amount) => (Vector3d.Lerp(moves[from], moves[to], amount) - moves[frame]).Length, shares.Translation) : null;

    private readonly bool[]? turns = track.Rotations is { } turns
        ? Thinning.Keep(times, (from, to, frame, amount) => Quaterniond.Angle(Slerp.Between(turns[from], turns[to], amount), ((Quaterniond)turns[frame]).Normalized()), shares.Radians) : null;

    private readonly bool[]? scales = track.Scales is { } scales
        ? Thinning.Keep(times, (from, to, frame, amount) => (Vector3d.Lerp(scales[from], scales[to], amount) - scales[frame]).Length, shares.Scale) : null;

    public void Keep(int frame)
    {
        moves?[frame] = true;
        turns?[frame] = true;
        scales?[frame] = true;
    }

    public BakedTrack ToTrack()
    {
        var (moveKeys, turnKeys, scaleKeys) = (Thinning.Keys(moves), Thinning.Keys(turns), Thinning.Keys(scales));
        return new BakedTrack(track.Joint, Thinning.Only(track.Translations, moveKeys), Thinning.Only(track.Rotations, turnKeys), Thinning.Only(track.Scales, scaleKeys))
        {
            TranslationKeys = moveKeys,
            RotationKeys = turnKeys,
            ScaleKeys = scaleKeys,
        };
    }
}

/// <summary>Thins one channel: a span goes in a line if none of its samples is off by more than allowed, else it is split where one is off most (Ramer 1972; Douglas and Peucker 1973).</summary>
internal static class Thinning
{
    /// <summary>How far a sample is from the line between two others.</summary>
    public delegate double Distance(int from, int to, int frame, double amount);

    public static bool[] Keep(float[] times, Distance distance, double allowed)
    {
        var keep = new bool[times.Length];
        keep[0] = keep[^1] = true;
        var spans = new Stack<(int From, int To)>([(0, times.Length - 1)]);
        while (spans.TryPop(out var span))
        {
            var (worst, at) = (allowed, -1);
            var length = (double)times[span.To] - times[span.From];
            for (var frame = span.From + 1; frame < span.To; frame++)
            {
                if (distance(span.From, span.To, frame, ((double)times[frame] - times[span.From]) / length) is var off && off > worst)
                    (worst, at) = (off, frame);
            }

            if (at < 0)
                continue;
            keep[at] = true;
            spans.Push((span.From, at));
            spans.Push((at, span.To));
        }

        return keep;
    }

    /// <summary>The kept keys' indices; null when all are.</summary>
    public static int[]? Keys(bool[]? keep) => keep is null || !keep.Contains(false) ? null : [.. keep.Index().Where(key => key.Item).Select(key => key.Index)];

    public static T[]? Only<T>(T[]? values, int[]? keys) => values is null || keys is null ? values : Array.ConvertAll(keys, key => values[key]);
}
