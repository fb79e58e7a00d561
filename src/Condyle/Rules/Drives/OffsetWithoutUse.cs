using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY3005: a drive keeps the rest offset from a source that rests where its target does.</summary>
internal sealed class OffsetWithoutUse : ModelRule
{
    public override string Id => "CDY3005";

    public override string Title => "Rest offset kept where there is none";

    public override Severity Severity => Severity.Info;

    public override string Fix => "leave the offset out";

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        // A helper that keeps the offset for all who call it is right as soon as one of them has one.
        foreach (var said in model.Drives.Where(drive => drive.Kept is not null).GroupBy(drive => drive.Kept!.Place))
        {
            if (!said.All(IsOfNoUse))
                continue;
            foreach (var drive in said)
                yield return FindingOf(drive, drive.Kept!);
        }
    }

    private Finding FindingOf(RigDrive drive, OffsetKept kept)
    {
        var (target, source) = (drive.Target!, drive.Sources[0].Source!);
        return new Finding(
            this,
            drive,
            $"{target.Title} keeps the offset that it has from {source.Title} at rest, but there is none, as both rest at the same place. It does nothing now, and on the day one of the two is placed elsewhere {target.Title} stays away from {source.Title} without a word. Leave it out.",
            kept.Place)
        {
            ActsOn = target,
            Related = drive.Sources[0].Place == kept.Place ? [] : [drive.Sources[0].Place],
            Repairs = [new LeaveOut(kept.Event, $"Drive {target.Title} onto {source.Title} without an offset")],
        };
    }

    private static bool IsOfNoUse(RigDrive drive)
    {
        if (drive.Target is not { IsUnknown: false } target || drive.Sources is not [{ IsCertain: true, Source: { IsUnknown: false } source } said]
            || !drive.KeepsOffset.TryKnown(out var keeps) || !keeps || !drive.WritesScale.TryKnown(out var scales)
            || Stand.Of(target) is not { } mine || Stand.Of(source) is not { } theirs || mine.At != theirs.At)
            return false;
        // The offset from a joint's own frame takes out the scale that it rests with.
        return (said.Way == DriveWay.Channels && !scales) || (mine.IsClean && theirs.IsClean);
    }
}
