namespace Condyle.Runtime;

/// <summary>
/// The built-in clip that shows all that a rig can do: each control goes through its limits, one channel after another, each dial through its range, each choice through its options, and each switch to its other end
/// and back. Controls that move no joint while the switches are at their defaults come after the switches have gone over, so that every limb is seen both ways.
/// What turns several times takes its time: at 10 frames a second it still goes by less than half a turn a frame. The clip is the same for the same rig, and its markers say what moves when.
/// </summary>
public static class RangeOfMotion
{
    /// <summary>The clip's name.</summary>
    public const string ClipName = "range_of_motion";

    /// <summary>How far a control turns where no limit is set, in degrees to either side.</summary>
    public const float DefaultTurn = 30;

    /// <summary>How far a control moves where no limit is set, in metres to either side.</summary>
    public const float DefaultMove = 0.1f;

    /// <summary>The factors between which a control scales where its scale is unlocked.</summary>
    public const float LeastScale = 0.8f, GreatestScale = 1.25f;

    /// <summary>Makes the clip.</summary>
    /// <param name="rig">The rig to show.</param>
    /// <returns>The clip, named <see cref="ClipName"/>.</returns>
    /// <exception cref="BadInputException">The rig has no switch, dial or choice and no control with an unlocked channel, so there is nothing to show.</exception>
    public static Clip Of(CompiledRig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return Find(rig) ?? throw new BadInputException(
            $"rig '{rig.Name}'", "no control has an unlocked channel and there is no switch, dial or choice, so there is no range of motion", "Unlock a control's channels");
    }

    /// <summary>The clip, or null for a rig that has nothing to show.</summary>
    internal static Clip? Find(CompiledRig rig)
    {
        var steps = MotionPlan.Of(rig).Steps;
        if (steps.Count == 0)
            return null;
        var clip = new Clip(ClipName, steps.Sum(step => step.Spans) * MotionPlan.StepSeconds);
        var spans = 0;
        foreach (var step in steps)
        {
            var from = spans * MotionPlan.StepSeconds;
            spans += step.Spans;
            clip.Mark(from, step.Name);
            step.Key(clip, from, spans * MotionPlan.StepSeconds);
        }

        return clip;
    }
}
