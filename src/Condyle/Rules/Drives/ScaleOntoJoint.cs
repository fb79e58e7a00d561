using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY3009: where the team's engine takes no scale on joints, nothing writes any.</summary>
internal sealed class ScaleOntoJoint : ModelRule
{
    public override string Id => "CDY3009";

    public override string Title => "Scale written to a joint of an engine that takes none";

    public override Severity Severity => Severity.Error;

    public override string Fix => "leave the scale out";

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        if (!conventions.IsScaleForbidden)
            return [];
        var driven =
            from drive in model.Drives
            where drive is { Target: { IsExported: true, IsUnknown: false } } && drive.Sources.Count > 0 && drive.Sources.TrueForAll(source => source.Way == DriveWay.Channels)
            let said = ScaleOf(drive)
            where said is not null
            select FindingOf(drive, drive.Target!, said.Value, drive.Scaled is { } call && call.Place == said ? [new LeaveOut(call.Event, $"Drive {drive.Target!.Title} without scale")] : []);
        var set =
            from response in model.Responses
            from target in response.Targets
            where target is { Way: ResponseWay.Scale, Node: { IsExported: true, IsUnknown: false } }
            select FindingOf(response, target.Node!, target.Place, []);
        return driven.Concat(set);
    }

    /// <summary>Where a drive is told to write scale.</summary>
    private static PlaceId? ScaleOf(RigDrive drive) =>
        drive.WritesScale.TryKnown(out var scales) && scales ? drive.Scaled?.Place
        : drive.Writes.TryKnown(out var only) && ((only ?? Channels.None) & Channels.Scale) != Channels.None ? drive.Sources[0].Place
        : null;

    private Finding FindingOf(RigElement sentence, RigNode joint, PlaceId place, IReadOnlyList<Repair> repairs) => new(
        this,
        sentence,
        $"{joint.Title} is scaled here, and the engine takes no scale on joints ({TeamSetting.JointScale.Property}): the animator sees it grow, the game doesn't, and what hangs below it stands elsewhere there. Write no scale, or move a joint instead.",
        place)
    {
        ActsOn = joint,
        Repairs = repairs,
    };
}
