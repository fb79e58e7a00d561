using System.Numerics;

namespace Condyle.Runtime;

/// <summary>What the range of motion shows, in order: one step for each channel, dial and choice and for each way of a switch.</summary>
internal sealed class MotionPlan
{
    /// <summary>How long a step lasts: to the one end, to the other, and back. One that turns far lasts several times as long.</summary>
    public const float StepSeconds = 0.8f;

    /// <summary>How fast a joint may turn, in degrees a second: at 10 frames a second that is half a turn, beyond which its way couldn't be told from the shorter one round the other side.</summary>
    private const double FastestTurn = 1800;

    /// <summary>Into how many pieces a dial's range is cut to see how it turns joints; an odd number, so that whole turns don't look like none.</summary>
    private const int Looks = 61;

    /// <summary>Pieces that turn a joint by more are cut further.</summary>
    private const double CoarseTurn = 60, MostLooks = 61 * 256;

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
        plan.Steps.AddRange(rig.Dials.Select(dial => new DialStep(dial, plan.TurnOf(dial))));
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

    /// <summary>How many times <see cref="StepSeconds"/> it takes to go from rest to the one end, to the other and back without turning faster than can be seen.</summary>
    /// <param name="rest">Where it begins and ends.</param>
    /// <param name="least">The one end.</param>
    /// <param name="greatest">The other one.</param>
    /// <param name="degrees">By how many degrees it turns for each unit of these.</param>
    public static int Spans(double rest, double least, double greatest, double degrees)
    {
        // The middle leg has half of the time, the others a quarter each.
        var perSpan = Math.Max(2 * Math.Abs(greatest - least), 4 * Math.Max(Math.Abs(least - rest), Math.Abs(greatest - rest))) * degrees;
        return Math.Max(1, (int)Math.Ceiling((perSpan / (FastestTurn * StepSeconds)) - 1e-3));
    }

    /// <summary>By how many degrees a dial turns a joint for each of its units where it turns one fastest.</summary>
    private double TurnOf(CompiledDial dial)
    {
        for (var looks = dial.Unit == DialUnit.Degrees ? Math.Max(Looks, (int)((dial.To - dial.From) / CoarseTurn)) : Looks; ; looks *= 4)
        {
            if (LargestTurn(dial, looks) is var turn && (turn <= CoarseTurn || looks >= MostLooks))
                return turn * looks / (dial.To - (double)dial.From);
        }
    }

    private double LargestTurn(CompiledDial dial, int looks)
    {
        var (largest, before) = (0.0, new Quaternion[rig.Joints.Count]);
        probe.Reset();
        for (var look = 0; look <= looks; look++)
        {
            probe.SetDial(dial.Index, float.Lerp(dial.From, dial.To, (float)look / looks));
            probe.Evaluate();
            foreach (var joint in rig.Joints)
            {
                var now = probe.JointRotation(joint.Index);
                if (look > 0)
                    largest = Math.Max(largest, Condyle.Evaluation.Quaterniond.Angle(before[joint.Index], now) * (180 / Math.PI));
                before[joint.Index] = now;
            }
        }

        return largest;
    }

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
