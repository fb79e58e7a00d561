using System.Numerics;
using Condyle.Runtime.Baking;
using Condyle.Runtime.Clips.Files;

namespace Condyle.Runtime.Matching.Motions;

/// <summary>Takes down what an instance's controls, switches, dials and choices are set to, frame by frame, and makes a clip of what ever leaves rest.</summary>
internal sealed class MotionKeys(CompiledRig rig, float[] times)
{
    private const float Rounding = 1e-7f;

    private readonly Vector3[][] scales = New<Vector3>(rig.Controls.Count, times.Length);
    private readonly int[][] picks = New<int>(rig.Choices.Count, times.Length);
    private readonly Vector3[][] moves = New<Vector3>(rig.Controls.Count, times.Length);
    private readonly Quaternion[][] turns = New<Quaternion>(rig.Controls.Count, times.Length);
    private readonly float[][] switches = New<float>(rig.Switches.Count, times.Length);
    private readonly float[][] dials = New<float>(rig.Dials.Count, times.Length);

    public void Take(RigInstance instance, int frame)
    {
        for (var control = 0; control < moves.Length; control++)
            (moves[control][frame], turns[control][frame], scales[control][frame]) = (instance.ControlMove(control), instance.ControlTurn(control), instance.ControlScale(control));
        for (var sw = 0; sw < switches.Length; sw++)
            switches[sw][frame] = instance.InputAt(rig.Model.Switches[sw]);
        for (var dial = 0; dial < dials.Length; dial++)
            dials[dial][frame] = instance.InputAt(rig.Model.Dials[dial]);
        for (var choice = 0; choice < picks.Length; choice++)
            picks[choice][frame] = rig.Model.Choices[choice].Options.Index().MaxBy(option => instance.InputAt(option.Item)).Index;
    }

    /// <param name="name">The clip's name.</param>
    /// <param name="seconds">Its length.</param>
    /// <param name="shown">Switches that have one value all along.</param>
    /// <param name="tolerance">By how much a control's own channels may be off where keys are left out; none: there is a key on every frame.</param>
    public Clip ToClip(string name, float seconds, IReadOnlyDictionary<int, float> shown, BakeTolerance? tolerance = null)
    {
        var clip = new Clip(name, seconds);
        foreach (var control in rig.Controls)
        {
            if (moves[control.Index].Any(move => move.Length() > Rounding))
                clip.Take(control.Name, Fill(new VectorTrack(), moves[control.Index], Keep(moves[control.Index], Apart, tolerance?.Metres)));
            if (turns[control.Index].Any(turn => new Vector3(turn.X, turn.Y, turn.Z).Length() > Rounding))
                clip.Take(control.Name, Fill(new TurnTrack(), turns[control.Index], Keep(turns[control.Index], Apart, tolerance?.Degrees)));
            if (scales[control.Index].Any(scale => scale != Vector3.One))
                clip.TakeScale(control.Name, Fill(new VectorTrack(), scales[control.Index], Keep(scales[control.Index], Apart, tolerance?.Metres)));
        }

        foreach (var sw in rig.Switches)
        {
            if (shown.TryGetValue(sw.Index, out var value))
                clip.Switch(sw.Name, 0, value);
            else if (switches[sw.Index].Any(set => set != sw.AtRest))
                clip.TakeSwitch(sw.Name, Fill(new NumberTrack(), switches[sw.Index], Keep(switches[sw.Index], Apart, tolerance is null ? null : Rounding)));
        }

        foreach (var dial in rig.Dials.Where(dial => dials[dial.Index].Any(set => set != dial.AtRest)))
            clip.TakeDial(dial.Name, Fill(new NumberTrack(), dials[dial.Index], Keep(dials[dial.Index], Apart, tolerance is null ? null : Rounding)));
        foreach (var choice in rig.Choices.Where(choice => picks[choice.Index].Any(option => option != 0)))
        {
            foreach (var (frame, option) in picks[choice.Index].Index())
            {
                if (tolerance is null || frame == 0 || option != picks[choice.Index][frame - 1])
                    clip.Choice(choice.Name, times[frame], choice.Options[option]);
            }
        }

        if (clip.IsEmpty && rig.Controls.Count > 0)
            clip.Take(rig.Controls[0].Name, Fill(new TurnTrack(), turns[0])); // a clip in which nothing moves has a key all the same
        return clip;
    }

    private TTrack Fill<TTrack, T>(TTrack track, T[] values, int[]? keys = null)
        where TTrack : CurveTrack<T>
        where T : struct => new Keys<T>(Thinning.Only(times, keys)!, Thinning.Only(values, keys)!, null, Interpolation.Linear).Fill(track);

    /// <summary>The keys that are needed so that no value on the lines between them is further off than allowed; all where nothing is.</summary>
    private int[]? Keep<T>(T[] values, Func<T, T, T, float, double> apart, double? allowed) => allowed is not { } most ? null
        : Thinning.Keys(Thinning.Keep(times, (from, to, frame, amount) => apart(values[from], values[to], values[frame], (float)amount), most));

    private static double Apart(Vector3 from, Vector3 to, Vector3 value, float amount) => Vector3.Distance(Vector3.Lerp(from, to, amount), value);

    private static double Apart(Quaternion from, Quaternion to, Quaternion value, float amount) =>
        Evaluation.Quaterniond.Angle(Evaluation.Slerp.Between(from, to, amount), ((Evaluation.Quaterniond)value).Normalized()) * (180 / Math.PI);

    private static double Apart(float from, float to, float value, float amount) => Math.Abs(float.Lerp(from, to, amount) - value);

    private static T[][] New<T>(int count, int frames) => [.. Enumerable.Range(0, count).Select(_ => new T[frames])];
}
