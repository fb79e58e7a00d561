using Condyle.Model;
using Condyle.Runtime.Baking;
using Condyle.Runtime.Matching;
using Condyle.Runtime.Matching.Fitting;
using Condyle.Runtime.Matching.Motions;

namespace Condyle.Runtime;

/// <summary>Puts motion of joints onto the controls of a rig: that of an older skeleton or another character, or of an actor.</summary>
/// <remarks>
/// Frame by frame, from the root down, each control that a joint follows is set so that the joint stands where the motion has it; limbs with IK and FK get both, the goal and the pole by matching, and so do chains that a curve has by one source. A chain that lies along a curve alone gets the curve's controls, so that its joints come near.
/// Where the skeletons don't rest alike, <see cref="RestPolicy"/> says what is kept. Bones keep the rig's own lengths; moves are scaled by the size of the characters. Locked channels stay locked, and limits are passed and noted.
/// What is aimed looks by the control that it is aimed at. What a rig works out by itself (twists, IK without a switch, falloffs) is left to it. Dials stay at their defaults unless <see cref="MotionMatchSettings.Choices"/> keys them, and the result says which of them the motion seems to need. The result says how far each joint is off.
/// </remarks>
public static class MotionMatch
{
    private const float DefaultRate = 30;

    /// <summary>Makes a clip of a motion.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="motion">The motion.</param>
    /// <param name="names">Which joint is which; null: those of one name.</param>
    /// <param name="settings">What is kept, at which frame rate; defaults when null.</param>
    /// <param name="progress">Told how far it is, from 0 to 1.</param>
    /// <param name="cancellation">Stops it between frames.</param>
    /// <returns>The clip, and how far each joint is off.</returns>
    /// <exception cref="BadInputException">No joint of the motion is one of the rig, the map names one that isn't there, or the frame rate or the scale can't be.</exception>
    public static MotionMatchResult Run(
        CompiledRig rig, JointMotion motion, JointMap? names = null, MotionMatchSettings? settings = null, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(motion);
        settings ??= new MotionMatchSettings();
        if (settings.Scale is { } scale && !(scale >= 0 && double.IsFinite(scale)))
            throw new BadInputException(motion.File, $"can't be scaled by {Invariant.Short(scale)}", "Give a finite number, not below zero, or none", motion.Name);
        if (settings.Keys is { CanBe: false } tolerance)
            throw new BadInputException(motion.File, $"can't have keys within {Invariant.Short(tolerance.Metres * 1000)} mm and {Invariant.Short(tolerance.Degrees)}°", $"Give {BakeTolerance.Least}, or none for a key on every frame", motion.Name);
        var from = (names ?? new JointMap()).Bind(motion, rig);
        var rate = settings.FramesPerSecond ?? motion.FramesPerSecond ?? DefaultRate;
        var seconds = Math.Max(motion.Seconds, rate > 0 ? 1 / rate : 1);
        var times = FrameTimes.Of(new Clip(motion.Name, seconds), new BakeSettings { FramesPerSecond = rate }).Times;

        var (wanted, plan, keys) = (new Retargeting(rig, motion, from, settings), new PosePlan(rig), new MotionKeys(rig, times));
        var (instance, notes) = (rig.NewInstance(), new MatchNotes());
        foreach (var (sw, value) in plan.Shown)
            instance.SetSwitch(sw, value);
        var answers = new CurveAnswers();
        var pose = new LivePose(rig.LimbTable, instance, answers);
        var choices = settings.Choices is { } chosen ? new ClipPlayer(rig, chosen) : null;
        foreach (var (frame, time) in times.Index())
        {
            cancellation.ThrowIfCancellationRequested();
            if (choices is not null)
            {
                choices.Pose(instance, time);
                pose.Refresh();
            }

            var should = wanted.At(time);
            foreach (var step in plan.Steps)
                step.Put(pose, should);
            foreach (var limb in rig.LimbTable.Plans)
            {
                var match = GoalMatch.Make(limb, new LivePose(rig.LimbTable, instance, answers), switches: settings.Limbs == LimbCopy.Solved);
                notes.Take(match.Notes, time, Weigh.Both(match.Metres, match.Degrees));
            }

            notes.Take(pose.Notes, time);
            pose.Notes.Clear();
            pose.Refresh(); // the limbs' goals were set beside it
            keys.Take(instance, frame);
            progress?.Report((frame + 1.0) / times.Length);
        }

        IReadOnlyDictionary<int, float> shown = settings.Limbs == LimbCopy.Solved ? plan.ShownSolved() : plan.Shown;
        var clip = settings.Keys is { } allowed
            ? ThinnedMotion.Of(rig, times, allowed, share => keys.ToClip(motion.Name, seconds, shown, share), cancellation)
            : keys.ToClip(motion.Name, seconds, shown);
        return Report(rig, motion, from, clip, times, wanted, notes, cancellation);
    }

    private static MotionMatchResult Report(CompiledRig rig, JointMotion motion, int[] from, Clip clip, float[] times, Retargeting wanted, MatchNotes notes, CancellationToken cancellation)
    {
        var (player, live, off) = (new ClipPlayer(rig, clip), rig.NewInstance(), new Comparison(rig));
        var dials = new NeededDials(rig, wanted, from);
        foreach (var time in times)
        {
            player.Pose(live, time);
            live.Evaluate();
            var should = wanted.At(time);
            foreach (var joint in rig.Joints)
            {
                var inWorld = Off.Between(live.Place(joint.Index), Place.Of(should[joint.Index]));
                off.Take(joint.Index, inWorld, time);
                dials.Take(live, joint.Index, inWorld, should, time);
            }
        }

        var taken = from.Where(index => index >= 0).ToHashSet();
        List<Deviation> had = [.. rig.Joints.Where(joint => from[joint.Index] >= 0).Select(joint => off.Of(joint.Index))];
        return new MotionMatchResult(
            clip,
            Deviation.Largest(had),
            [.. rig.Joints.Select(joint => new MatchedJoint(joint.Name, from[joint.Index] is >= 0 and var source ? motion.Joints[source].Name : null, off.Of(joint.Index)))],
            [.. motion.Joints.Index().Where(joint => joint.Item.Name.Length > 0 && !taken.Contains(joint.Index)).Select(joint => joint.Item.Name)],
            [.. rig.Joints.Where(joint => from[joint.Index] < 0).Select(joint => joint.Name)],
            notes.All)
        {
            NeededDials = dials.Find(player, off, cancellation),
        };
    }
}
