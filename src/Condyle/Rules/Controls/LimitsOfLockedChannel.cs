using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY5010: a channel that is limited is one that an animator may use.</summary>
internal sealed class LimitsOfLockedChannel : Rule
{
    public override string Id => "CDY5010";

    public override string Title => "Limits of a locked channel";

    public override Severity Severity => Severity.Warning;

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        var limits = (
            from control in rig.Model.Nodes
            where control.Limits.Count > 0 && !control.LimitsAreOpen
            from limit in control.Limits
            select (Control: control, Limit: limit)).ToList();
        if (!limits.Exists(each => IsLocked(each.Control, each.Limit)) || rig.Moves.AreOpen)
            return [];

        // A helper that limits what it is given is right as soon as one of them is free, and so is one that a sentence moves within those limits.
        return limits.GroupBy(each => (each.Limit.Place, each.Limit.Turns, each.Limit.Axis))
            .Where(said => said.All(each => IsLocked(each.Control, each.Limit) && rig.Moves.Of(each.Control).Count == 0))
            .SelectMany(said => said.Select(each => FindingOf(each.Control, each.Limit)));
    }

    private Finding FindingOf(RigNode control, ChannelLimit limit)
    {
        var channel = limit.Turns ? $"turn about {limit.Axis}" : $"move along {limit.Axis}";
        return new Finding(
            this,
            control,
            $"The {channel} of {control.Title} is limited, and it is locked: nobody can use it within those limits or beyond. Unlock it, or leave the limits out.",
            limit.Place)
        {
            Related = control.Place == limit.Place ? [] : [control.Place],
        };
    }

    private static bool IsLocked(RigNode control, ChannelLimit limit) => control.Locked.TryKnown(out var locked) && (locked & ChannelOf(limit)) != Channels.None;

    private static Channels ChannelOf(ChannelLimit limit) => (limit.Turns, limit.Axis) switch
    {
        (true, Axis.X) => Channels.TurnX,
        (true, Axis.Y) => Channels.TurnY,
        (true, _) => Channels.TurnZ,
        (false, Axis.X) => Channels.MoveX,
        (false, Axis.Y) => Channels.MoveY,
        _ => Channels.MoveZ,
    };
}
