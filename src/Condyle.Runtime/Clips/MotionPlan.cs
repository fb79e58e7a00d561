using System.Numerics;

namespace Condyle.Runtime;

/// <summary>What the range of motion shows, in order: one step for each channel, dial and choice and for each way of a switch.</summary>
internal sealed class MotionPlan
{
    /// <summary>How long a step lasts: to the one end, to the other, and back.</summary>
    public const float StepSeconds = 0.8f;

    /// <summary>A move below this is rounding.</summary>
    private const float Stir = 1e-5f;

    private readonly CompiledRig rig;
    private readonly RigInstance probe;

    private MotionPlan(CompiledRig rig)
    {
        this.rig = rig;
        probe = rig.NewInstance();
    }

    public List<MotionStep> Steps { get; } = [];

    public static MotionPlan Of(CompiledRig rig)
    {
        var plan = new MotionPlan(rig);
        var late = rig.Switches.Count == 0 ? [] : rig.Controls.Where(control => !plan.MovesJoints(control, over: false) && plan.MovesJoints(control, over: true)).ToList();
        foreach (var control in rig.Controls.Except(late))
            plan.AddChannels(control);
        plan.Steps.AddRange(rig.Dials.Select(dial => new DialStep(dial)));
        plan.Steps.AddRange(rig.Choices.Where(choice => choice.Options.Count > 1).Select(choice => new ChoiceStep(choice)));
        foreach (var sw in rig.Switches)
            plan.Steps.Add(new SwitchStep(sw, over: true));
        foreach (var control in late)
            plan.AddChannels(control);
        foreach (var sw in rig.Switches)
            plan.Steps.Add(new SwitchStep(sw, over: false));
        return plan;
    }

    private void AddChannels(CompiledControl control) =>
        Steps.AddRange(ChannelNames.Each(Channels.All & ~control.Locked).Select(channel => new ChannelStep(control, channel)));

    private bool MovesJoints(CompiledControl control, bool over)
    {
        probe.Reset();
        if (over)
        {
            foreach (var sw in rig.Switches)
                probe.SetSwitch(sw.Index, SwitchStep.OtherEnd(sw));
        }

        probe.Evaluate();
        var before = Joints();
        foreach (var channel in ChannelNames.Each(Channels.All & ~control.Locked))
        {
            new ChannelStep(control, channel).Set(probe);
            probe.Evaluate();
            if (Joints().Zip(before).Any(pair => Differ(pair.First, pair.Second)))
                return true;
        }

        return false;
    }

    private Matrix4x4[] Joints() => [.. rig.Joints.Select(joint => probe.JointWorld(joint.Index))];

    private static bool Differ(Matrix4x4 a, Matrix4x4 b)
    {
        for (var row = 0; row < 4; row++)
        {
            if (Vector4.Distance(a[row], b[row]) > Stir)
                return true;
        }

        return false;
    }
}
