using System.Numerics;
using Condyle.Evaluation;
using Condyle.Model;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Evaluation;

/// <summary>Random values for all controls, switches, dials and choices of a rig, in a form that both evaluators take.</summary>
internal sealed class RandomPose
{
    private readonly List<(Vector3 Move, Quaternion Turn, Vector3 Scale)> controls = [];
    private readonly List<float> switches = [];
    private readonly List<float> dials = [];
    private readonly List<(int From, int To, float Amount)> picks = [];

    public RandomPose(CompiledRig rig, int seed)
    {
        var choices = new RandomChoices(seed);
        foreach (var control in rig.Controls)
        {
            controls.Add((
                choices.Chance(0.2) ? Vector3.Zero : choices.Vector(0.3f),
                choices.Chance(0.2) ? Quaternion.Identity : choices.Turn(choices.Chance(0.2) ? MathF.PI : 1),
                (control.Locked & Channels.Scale) == Channels.Scale ? Vector3.One : Vector3.One + choices.Vector(0.3f)));
        }

        foreach (var _ in rig.Switches)
            switches.Add(choices.Below(4) switch { 0 => 0, 1 => 1, _ => choices.Between(0f, 1f) });
        foreach (var dial in rig.Dials)
            dials.Add(choices.Between(dial.From, dial.To));
        foreach (var choice in rig.Choices)
            picks.Add((choices.Below(choice.Options.Count), choices.Below(choice.Options.Count), choices.Chance(0.7) ? 1 : choices.Between(0f, 1f)));
    }

    public void Set(RigInstance instance)
    {
        for (var i = 0; i < controls.Count; i++)
        {
            instance.SetMove(i, controls[i].Move);
            instance.SetTurn(i, controls[i].Turn);
            instance.SetScale(i, controls[i].Scale);
        }

        for (var i = 0; i < switches.Count; i++)
            instance.SetSwitch(i, switches[i]);
        for (var i = 0; i < dials.Count; i++)
            instance.SetDial(i, dials[i]);
        for (var i = 0; i < picks.Count; i++)
            instance.SetChoice(i, picks[i].From, picks[i].To, picks[i].Amount);
    }

    /// <summary>The same for the reference, strayed by up to a distance in metres, radians and weight.</summary>
    public Pose For(RigModel model, float jitter, int seed)
    {
        var noise = new RandomChoices(seed);
        var pose = new Pose();
        foreach (var (index, control) in model.Nodes.Where(node => node.Kind == NodeKind.Control).Index())
        {
            var (move, turn, scale) = controls[index];
            pose.Set(control.Id, new Trs(
                (Vector3d)move + noise.Vector(jitter),
                (Quaterniond)noise.Turn(jitter) * (Quaterniond)turn,
                (Vector3d)scale + noise.Vector(jitter)));
        }

        foreach (var (index, given) in model.Switches.Index())
            pose.SetSwitch(given.Id, Math.Clamp(switches[index] + noise.Between(-jitter, jitter), 0, 1));
        foreach (var (index, dial) in model.Dials.Index())
            pose.SetDial(dial.Id, dials[index] + noise.Between(-jitter, jitter));
        foreach (var (index, choice) in model.Choices.Index())
            pose.SetChoice(choice.Options[picks[index].From], choice.Options[picks[index].To], Math.Clamp(picks[index].Amount + (picks[index].Amount == 1 ? 0 : noise.Between(-jitter, jitter)), 0, 1));
        return pose;
    }
}
