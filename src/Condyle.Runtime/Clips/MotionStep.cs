using System.Numerics;

namespace Condyle.Runtime;

/// <summary>One step of the range of motion.</summary>
internal abstract class MotionStep(string name)
{
    public string Name { get; } = name;

    /// <summary>How many times <see cref="MotionPlan.StepSeconds"/> it lasts.</summary>
    public virtual int Spans => 1;

    /// <summary>Adds the step's keys to a clip whose keys end at <paramref name="from"/> or earlier.</summary>
    public abstract void Key(Clip clip, float from, float to);
}

/// <summary>A channel of a control goes to the one end of its range, to the other, and back to rest.</summary>
internal sealed class ChannelStep : MotionStep
{
    /// <summary>Turns take the short way from key to key, so a key stands at least this often, in degrees.</summary>
    private const float LongestTurn = 90;

    private readonly CompiledControl control;
    private readonly Channels channel;
    private readonly Axis axis;
    private readonly float rest, least, greatest;

    public ChannelStep(CompiledControl control, Channels channel)
        : base($"{control.Name} {ChannelNames.Say(channel)}")
    {
        (this.control, this.channel) = (control, channel);
        axis = (Axis)(BitOperations.Log2((uint)channel) % 3);
        var limit = control.Limits.FirstOrDefault(limit => limit.Axis == axis && (limit.Turns ? Turns : Moves));
        (rest, least, greatest) = Turns ? (0, End(limit?.From, -RangeOfMotion.DefaultTurn), End(limit?.To, RangeOfMotion.DefaultTurn))
            : Moves ? (0, End(limit?.From, -RangeOfMotion.DefaultMove), End(limit?.To, RangeOfMotion.DefaultMove))
            : (1, RangeOfMotion.LeastScale, RangeOfMotion.GreatestScale);
    }

    public override int Spans => Turns ? MotionPlan.Spans(rest, least, greatest, degrees: 1) : 1;

    private bool Turns => Channels.Turn.HasFlag(channel);

    private bool Moves => Channels.Move.HasFlag(channel);

    public override void Key(Clip clip, float from, float to)
    {
        var quarter = (to - from) / 4;
        Leg(clip, from, rest, from + quarter, least, includeStart: !HasKeyAt(clip, from));
        Leg(clip, from + quarter, least, to - quarter, greatest, includeStart: false);
        Leg(clip, to - quarter, greatest, to, rest, includeStart: false);
    }

    /// <summary>Takes the control to the end that is further from rest.</summary>
    public void Set(RigInstance instance)
    {
        var value = Math.Abs(least - rest) > Math.Abs(greatest - rest) ? least : greatest;
        if (Turns)
            instance.SetTurn(control.Index, Runtime.Turns.About(axis, value));
        else if (Moves)
            instance.SetMove(control.Index, Along(value));
        else
            instance.SetScale(control.Index, Along(value));
    }

    /// <summary>A range may be open at an end, as a crane's slew is; there the default is shown.</summary>
    private static float End(float? limit, float otherwise) => limit is { } end && float.IsFinite(end) ? end : otherwise;

    private bool HasKeyAt(Clip clip, float at) =>
        Turns ? clip.Turned.TryGetValue(control.Name, out var turned) && turned.Times[^1] == at
        : (Moves ? clip.Moves : clip.Scales).TryGetValue(control.Name, out var track) && track.Times[^1] == at;

    private void Leg(Clip clip, float start, float from, float end, float to, bool includeStart)
    {
        var pieces = Turns ? Math.Max(1, (int)Math.Ceiling(Math.Abs(to - from) / LongestTurn)) : 1;
        for (var piece = includeStart ? 0 : 1; piece <= pieces; piece++)
        {
            var amount = (float)piece / pieces;
            var (at, value) = (piece == pieces ? end : start + ((end - start) * amount), from + ((to - from) * amount));
            if (Turns)
                clip.TurnAbout(control.Name, axis, (at, value));
            else if (Moves)
                clip.MoveAlong(control.Name, axis, (at, value));
            else
                clip.Scale(control.Name, at, Along(value).X, Along(value).Y, Along(value).Z);
        }
    }

    private Vector3 Along(float value)
    {
        var vector = new Vector3(rest);
        vector[(int)axis] = value;
        return vector;
    }
}

/// <summary>A switch goes to the end that is further from its default, or comes back from there.</summary>
internal sealed class SwitchStep(CompiledSwitch sw, bool over) : MotionStep($"{sw.Name} {(over ? "over" : "back")}")
{
    public static float OtherEnd(CompiledSwitch sw) => sw.AtRest < 0.5f ? 1 : 0;

    public override void Key(Clip clip, float from, float to)
    {
        var (start, end) = over ? (sw.AtRest, OtherEnd(sw)) : (OtherEnd(sw), sw.AtRest);
        if (!clip.Switches.TryGetValue(sw.Name, out var track) || track.Times[^1] < from)
            clip.Switch(sw.Name, from, start);
        clip.Switch(sw.Name, to, end);
    }
}

/// <summary>A dial goes to the one end of its range, to the other, and back to its default.</summary>
/// <param name="dial">The dial.</param>
/// <param name="degrees">By how many degrees it turns a joint for each of its units.</param>
internal sealed class DialStep(CompiledDial dial, double degrees) : MotionStep(dial.Name)
{
    public override int Spans => MotionPlan.Spans(dial.AtRest, dial.From, dial.To, degrees);

    public override void Key(Clip clip, float from, float to)
    {
        var quarter = (to - from) / 4;
        clip.Dial(dial.Name, (from, dial.AtRest), (from + quarter, dial.From), (to - quarter, dial.To), (to, dial.AtRest));
    }
}

/// <summary>A choice goes through its other options and back to the one at rest.</summary>
internal sealed class ChoiceStep(CompiledChoice choice) : MotionStep(choice.Name)
{
    public override void Key(Clip clip, float from, float to)
    {
        for (var option = 0; option < choice.Options.Count; option++)
            clip.Choice(choice.Name, from + ((to - from) * option / choice.Options.Count), choice.Options[option]);
        clip.Choice(choice.Name, to, choice.Options[0]);
    }
}
