using System.Globalization;

namespace Condyle.Runtime.Baking;

/// <summary>Compares baked motion with live motion, on the samples and between them.</summary>
internal static class BakeProof
{
    public const double AllowedDegrees = 0.002;

    /// <summary>Up to <see cref="Near"/> metres from the origin a joint may be off by this; beyond it, in proportion, as a float's rounding is.</summary>
    private const double AllowedNear = 2e-5, Near = 2;

    /// <summary>Sampling was half of the work.</summary>
    private const double Start = 0.5;

    /// <summary>How far a joint may be off on a sample, of a rig that reaches so far from the origin.</summary>
    public static double AllowedMetres(double reach) => AllowedNear * Math.Max(1, reach / Near);

    /// <summary>The proof of a bake.</summary>
    /// <param name="live">The live motion.</param>
    /// <param name="rest">The joints' rest in the file.</param>
    /// <param name="times">The samples' times.</param>
    /// <param name="everyKey">The tracks with a key at every time: they tell what the frame rate allows.</param>
    /// <param name="tracks">The tracks as they will be written.</param>
    /// <param name="settings">How it was baked.</param>
    /// <param name="work">Told how far it is.</param>
    public static BakeReport Run(LiveMotion live, IReadOnlyList<JointRest> rest, FrameTimes times, IReadOnlyList<BakedTrack> everyKey, IReadOnlyList<BakedTrack> tracks, BakeSettings settings, BakeWork work)
    {
        var rig = live.Rig;
        var (on, midway, random, changes) = (new Comparison(rig), new Comparison(rig), new Comparison(rig), new Comparison(rig));
        var bound = new FrameRateBound(rig, new Playback(rig, rest, everyKey, times.Times), times.Times.Length);
        var (allowance, beyond) = (settings.Keys ?? new BakeTolerance(0, 0), new Beyond());
        var curves = new DeviationCurves(rig, times.End);
        var reach = 0.0;
        Compare(live, rest, times, tracks, settings, (moment, joint, off) =>
        {
            curves.Take(joint, moment, off);
            var at = times.InClip(moment.Time);
            if (moment.Kind == MomentKind.OnFrame)
            {
                if (joint == 0)
                    work.Tick(Start, 1, moment.Frame + 1, times.Times.Length);
                on.Take(joint, off, at);
                return;
            }

            (moment.Kind switch { MomentKind.Midway => midway, MomentKind.AtRandom => random, _ => changes }).Take(joint, off, at);
            var allowed = settings.Between is { } asked ? new Off(asked.Metres, asked.Degrees) : bound.Of(joint, moment.Frame);
            beyond.Take(
                new Off(allowed.Metres + allowance.Metres, allowed.Degrees + allowance.Degrees), off, rig.Joints[joint].Name, at);
        }, distance => reach = Math.Max(reach, distance));

        var keys = tracks.Sum(track => (track.Translations?.Length ?? 0) + (track.Rotations?.Length ?? 0) + (track.Scales?.Length ?? 0));
        var every = everyKey.Sum(track => (track.Translations?.Length ?? 0) + (track.Rotations?.Length ?? 0) + (track.Scales?.Length ?? 0));
        return new BakeReport(
            live.Clip.Name,
            settings.FramesPerSecond,
            times.Times.Length,
            times.End,
            on.Largest,
            midway.Largest,
            settings.Keys?.Metres ?? AllowedMetres(reach),
            settings.Keys?.Degrees ?? AllowedDegrees,
            [.. rig.Joints.Select(joint => new JointDeviation(joint.Name, on.Of(joint.Index), midway.Of(joint.Index)) { AtRandom = random.Of(joint.Index), AroundChanges = changes.Of(joint.Index) })])
        {
            AtRandom = random.Largest,
            AroundChanges = ClipMoments.Changes(live.Clip).Length > 0 ? changes.Largest : null,
            BetweenBound = beyond.ToBound(settings.Between),
            Keys = keys,
            KeysOfEveryFrame = every,
            Curves = curves.ToCurves(),
        };
    }

    /// <summary>What is left of a tolerance for keys that are left out, after what the samples themselves are off.</summary>
    /// <exception cref="BadInputException">Nothing is.</exception>
    public static BakeTolerance Left(LiveMotion live, IReadOnlyList<JointRest> rest, FrameTimes times, IReadOnlyList<BakedTrack> tracks, BakeTolerance tolerance)
    {
        var (metres, degrees) = (tolerance.Metres, tolerance.Degrees);
        var playback = new Playback(live.Rig, rest, tracks, times.Times);
        live.Play(times.Times.Select(time => (double)time), (frame, moment) =>
        {
            var baked = playback.At(frame, 0);
            for (var joint = 0; joint < live.Rig.Joints.Count; joint++)
            {
                var off = Off.Between(moment.Place(joint), baked[joint]);
                (metres, degrees) = (Math.Min(metres, tolerance.Metres - off.Metres), Math.Min(degrees, tolerance.Degrees - off.Degrees));
            }
        });
        return metres > tolerance.Metres / 4 && degrees > tolerance.Degrees / 4 ? new BakeTolerance(metres, degrees) : throw live.Clip.Wrong(
            string.Create(CultureInfo.InvariantCulture, $"can't leave out keys within {tolerance.Metres * 1000} mm and {tolerance.Degrees}°: a float's rounding is nearly as large where it is"),
            "Give a larger tolerance, or move the character nearer to the origin");
    }

    /// <summary>Plays both and hands on how far each joint is off at each moment.</summary>
    public static void Compare(
        LiveMotion live, IReadOnlyList<JointRest> rest, FrameTimes times, IReadOnlyList<BakedTrack> tracks, BakeSettings settings, Action<Moment, int, Off> take, Action<double>? reach = null)
    {
        var playback = new Playback(live.Rig, rest, tracks, times.Times);
        var played = new Queue<Moment>();
        live.Play(Moments.Of(times, live.Clip, 1.0 / settings.FramesPerSecond).Select(moment =>
        {
            played.Enqueue(moment);
            return (double)moment.Time;
        }), (_, now) =>
        {
            var moment = played.Dequeue();
            var baked = playback.At(moment.Frame, moment.Amount);
            for (var joint = 0; joint < live.Rig.Joints.Count; joint++)
            {
                var place = now.Place(joint);
                reach?.Invoke(place.Origin.Length);
                take(moment, joint, Off.Between(place, baked[joint]));
            }
        });
    }

    /// <summary>The place where motion between samples comes nearest to what is allowed there, or goes furthest beyond it.</summary>
    private sealed class Beyond
    {
        private double worst = -1;
        private BetweenBound bound = new(0, 0, "", 0, IsAsked: false, Holds: true);

        public void Take(Off allowed, Off off, string joint, float at)
        {
            // A bound below a float's rounding would be none.
            var (metres, degrees) = (Math.Max(allowed.Metres, BakeTolerance.LeastMetres), Math.Max(allowed.Degrees, BakeTolerance.LeastDegrees));
            var share = Math.Max(off.Metres / metres, off.Degrees / degrees);
            if (share <= worst)
                return;
            worst = share;
            bound = new BetweenBound(metres, degrees, joint, at, IsAsked: false, Holds: share <= 1);
        }

        public BetweenBound ToBound(BakeTolerance? asked) => bound with { IsAsked = asked is not null };
    }
}
