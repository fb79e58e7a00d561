using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY5003: a group's channels are only free where something writes them.</summary>
internal sealed class GroupUnlockedWithoutUse : Rule
{
    public override string Id => "CDY5003";

    public override string Title => "Group unlocked without use";

    public override Severity Severity => Severity.Warning;

    public override string Fix => "leave it locked";

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        var motion = rig.Motion;
        if (!motion.IsWhole)
            yield break;
        foreach (var group in rig.Model.Nodes)
        {
            if (group.Kind != NodeKind.Group || group.Unlocked.Count == 0 || motion.IsWritten(group)
                || !group.Locked.TryKnown(out var locked) || locked == Channels.All)
                continue;
            yield return new Finding(
                this,
                group,
                $"Group {group.Title} has free channels ({Channels.All & ~locked}) that nothing writes: clips animate controls, not groups, so they stay at zero until somebody moves the group by accident, and all that hangs under it with it. Leave it locked, or make it a control.",
                group.Unlocked[0].Place)
            {
                Related = [group.Place, .. group.Unlocked.Skip(1).Select(unlocked => unlocked.Place)],
                Repairs = group.Unlocked.Count == 1 ? [new LeaveOut(group.Unlocked[0].Event, $"Leave {group.Title} locked")] : [],
            };
        }
    }
}
