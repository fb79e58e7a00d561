using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Rules;

/// <summary>What a limb does wrong while it is handed over.</summary>
internal enum BreakKind
{
    /// <summary>A bone is longer or shorter on the way than at either end.</summary>
    Length,

    /// <summary>A joint turns all at once.</summary>
    Flip,

    /// <summary>Two bones lie on each other on the way, and at neither end.</summary>
    Fold,
}

/// <summary>Where a limb breaks on the way over: metres for a length, degrees for the others.</summary>
/// <param name="Kind">What happens.</param>
/// <param name="Bone">To which bone: the one that changes, or before the joint that flips or folds.</param>
/// <param name="At">At which value of the switches.</param>
/// <param name="Value">What is measured there.</param>
/// <param name="First">What is measured with the switches at 0.</param>
/// <param name="Last">What is measured with the switches at 1.</param>
internal sealed record LimbBreak(BreakKind Kind, BlendedBone Bone, double At, double Value, double First, double Last);

/// <summary>Measures the bones of limbs at some values of their switches.</summary>
internal static class LimbSweep
{
    /// <summary>A bone may change by this share of its length at rest.</summary>
    private const double LeastChange = 0.01;

    /// <summary>A joint that turns by more from one value to the next, in degrees: an even handover by half a turn has 45.</summary>
    private const double LeastFlip = 100;

    /// <summary>How often the stretch in which a joint flips is halved, to see whether it still does: then it is 1/256 of the switch.</summary>
    private const int Halvings = 6;

    /// <summary>The bend of bones that lie on each other, in degrees, and how much more it must be than at either end.</summary>
    private const double Folded = 150, LeastFold = 60;

    private static readonly double[] Values = [0, 0.25, 0.5, 0.75, 1];

    /// <summary>What breaks first in each limb; none in those that don't break or can't be evaluated.</summary>
    /// <remarks>All limbs go over at once first, which is the same few poses however many there are. One that breaks then has to break by its own switches alone.</remarks>
    public static IEnumerable<(BlendedLimb Limb, LimbBreak Break)> Broken(RigModel model, EvaluatedRig rig, IReadOnlyList<BlendedLimb> limbs)
    {
        var variables = new SortedSet<int>(limbs.SelectMany(limb => limb.Variables));
        foreach (var limb in BrokenBy(variables, limbs).Select(found => found.Limb).ToList())
        {
            foreach (var (_, breaks) in BrokenBy(limb.Variables, [limb]))
            {
                if (breaks.FirstOrDefault(found => found.Kind != BreakKind.Flip || StillFlips(limb, found)) is { } first)
                    yield return (limb, first);
            }
        }

        IReadOnlyList<(BlendedLimb Limb, IReadOnlyList<LimbBreak> Breaks)> BrokenBy(IReadOnlyCollection<int> over, IReadOnlyList<BlendedLimb> these)
        {
            var samples = new List<Dictionary<BlendedBone, Sample>>();
            foreach (var value in Values)
            {
                if (rig.In(TurnedPose.Of(model, over, value), frames => Measure(these, frames)) is not { } sample)
                    return [];
                samples.Add(sample);
            }

            return [.. these.Select(limb => (Limb: limb, Breaks: BreaksOf(limb, samples, rig.Rest))).Where(found => found.Breaks.Count > 0)];
        }

        bool StillFlips(BlendedLimb limb, LimbBreak flip)
        {
            var (from, to) = (flip.At - Values[1], flip.At);
            for (var i = 0; i < Halvings; i++)
            {
                var middle = (from + to) / 2;
                if (TurnAt(from) is not { } a || TurnAt(middle) is not { } b || TurnAt(to) is not { } c)
                    return false;
                (from, to) = Quaterniond.Angle(a.Turn, b.Turn) > Quaterniond.Angle(b.Turn, c.Turn) ? (from, middle) : (middle, to);
            }

            return TurnAt(from) is { } before && TurnAt(to) is { } after && Degrees(before.Turn, after.Turn) > LeastFlip / 2;

            Sample? TurnAt(double value) => rig.In(TurnedPose.Of(model, limb.Variables, value), frames => Measure([limb], frames))?[flip.Bone];
        }
    }

    private static Dictionary<BlendedBone, Sample> Measure(IReadOnlyList<BlendedLimb> limbs, PoseFrames frames)
    {
        var samples = new Dictionary<BlendedBone, Sample>();
        foreach (var bone in limbs.SelectMany(limb => limb.Bones))
        {
            var along = frames.WorldOf(bone.To).Origin - frames.WorldOf(bone.From).Origin;
            samples[bone] = new Sample(along, frames.ChannelsOf(bone.From).Rotation);
        }

        return samples;
    }

    private static IReadOnlyList<LimbBreak> BreaksOf(BlendedLimb limb, List<Dictionary<BlendedBone, Sample>> samples, RestPose rest)
    {
        var after = limb.Bones.ToLookup(bone => bone.From);
        return [.. new[]
        {
            Worst(limb.Bones.Select(bone => LengthBreak(bone, samples, rest))),
            Worst(limb.Bones.Select(bone => FlipOf(bone, samples))),
            Worst(limb.Bones.SelectMany(bone => after[bone.To].Select(next => FoldOf(bone, next, samples)))),
        }.OfType<LimbBreak>()];
    }

    private static LimbBreak? Worst(IEnumerable<LimbBreak?> breaks) => breaks.OfType<LimbBreak>().OrderByDescending(Excess).FirstOrDefault();

    private static double Excess(LimbBreak found) => Math.Max(found.Value - Math.Max(found.First, found.Last), Math.Min(found.First, found.Last) - found.Value);

    private static LimbBreak? LengthBreak(BlendedBone bone, List<Dictionary<BlendedBone, Sample>> samples, RestPose rest)
    {
        var length = (rest.WorldOf(bone.To).Origin - rest.WorldOf(bone.From).Origin).Length;
        return Worst(Between(BreakKind.Length, bone, [.. samples.Select(sample => sample[bone].Along.Length)]).Where(found => Excess(found) > Math.Max(Departure.LeastMetres, LeastChange * length)));
    }

    private static LimbBreak? FoldOf(BlendedBone bone, BlendedBone next, List<Dictionary<BlendedBone, Sample>> samples) =>
        Worst(Between(BreakKind.Fold, bone, [.. samples.Select(sample => Degrees(sample[bone].Along, sample[next].Along))]).Where(found => found.Value > Folded && Excess(found) > LeastFold));

    private static LimbBreak? FlipOf(BlendedBone bone, List<Dictionary<BlendedBone, Sample>> samples) => Worst(
        from i in Enumerable.Range(1, Values.Length - 1)
        let turn = Degrees(samples[i - 1][bone].Turn, samples[i][bone].Turn)
        where turn > LeastFlip
        select new LimbBreak(BreakKind.Flip, bone, Values[i], turn, 0, 0));

    private static IEnumerable<LimbBreak> Between(BreakKind kind, BlendedBone bone, double[] measured) =>
        Enumerable.Range(1, Values.Length - 2).Select(i => new LimbBreak(kind, bone, Values[i], measured[i], measured[0], measured[^1]));

    private static double Degrees(Vector3d a, Vector3d b) => Math.Atan2(Vector3d.Cross(a, b).Length, Vector3d.Dot(a, b)) * (180 / Math.PI);

    private static double Degrees(Quaterniond a, Quaterniond b) => Quaterniond.Angle(a, b) * (180 / Math.PI);

    /// <summary>A bone in the world, and the turn of its first joint in the joint above.</summary>
    private sealed record Sample(Vector3d Along, Quaterniond Turn);
}
