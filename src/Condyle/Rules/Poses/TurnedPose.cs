using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Rules;

/// <summary>A pose that shows a limb's sources apart, which at rest all stand in the same place: every control is turned about each of its axes, as far as it may.</summary>
internal static class TurnedPose
{
    /// <summary>By how many degrees a control without limits is turned about its axes: differently, so that no turn takes another back.</summary>
    private static readonly (Axis Axis, Channels Channel, double Degrees)[] Turns = [(Axis.X, Channels.TurnX, 30), (Axis.Y, Channels.TurnY, 20), (Axis.Z, Channels.TurnZ, 25)];

    /// <param name="model">The rig.</param>
    /// <param name="variables">Switches and options of choices that go over; all others are at rest.</param>
    /// <param name="over">How far they have gone: a switch has that value, and a choice stands so far between its first option and those.</param>
    public static Pose Of(RigModel model, IEnumerable<int> variables, double over)
    {
        var pose = new Pose();
        foreach (var node in model.Nodes)
        {
            if (node.Kind == NodeKind.Control)
                pose.Set(node.Id, Trs.Identity with { Rotation = TurnOf(node) });
        }

        foreach (var variable in variables)
        {
            if (model.SwitchOf(variable) is not null)
                pose.SetSwitch(variable, over);
            else if (model.OptionOf(variable) is { } option)
                pose.SetChoice(option.Choice.Options[0], option, over);
        }

        return pose;
    }

    private static Quaterniond TurnOf(RigNode control)
    {
        var turn = Quaterniond.Identity;
        if (!control.Locked.TryKnown(out var locked) || control.LimitsAreOpen)
            return turn;
        foreach (var (axis, channel, degrees) in Turns)
        {
            if ((locked & channel) == 0)
                turn *= Quaterniond.About(Vector3d.Unit(axis), Within(control, axis, degrees) * (Math.PI / 180));
        }

        return turn;
    }

    private static double Within(RigNode control, Axis axis, double degrees) =>
        control.Limits.Find(limit => limit.Turns && limit.Axis == axis) is not { } limit ? degrees
        : limit.From.TryKnown(out var from) && limit.To.TryKnown(out var to) && from <= to ? Math.Min(Math.Max(degrees, from), to)
        : 0;
}
