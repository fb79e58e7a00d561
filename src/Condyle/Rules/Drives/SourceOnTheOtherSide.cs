using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY3004: what is on one side follows that side's node where there is one.</summary>
internal sealed class SourceOnTheOtherSide : Rule
{
    public override string Id => "CDY3004";

    public override string Title => "Source on the other side";

    public override Severity Severity => Severity.Warning;

    public override string Fix => "this side's, where it has a name";

    public override IEnumerable<Finding> Check(CheckedRig rig) => rig.Once(Crossed).Select(FindingOf);

    /// <summary>The drives that take the other side's node for this side's.</summary>
    public static IEnumerable<CrossedDrive> Crossed(CheckedRig rig)
    {
        foreach (var drive in rig.Model.Drives)
        {
            if (drive.Target is not { IsUnknown: false } target || drive.Sources is not [{ IsCertain: true, Source: { IsUnknown: false } source } said]
                || SidedName.Of(target.Name, rig.Conventions) is not { } mine || SidedName.Of(source.Name, rig.Conventions) is not { } theirs || mine.Side == theirs.Side)
                continue;
            if (rig.Pairs.CounterpartOf(source) is { } meant && IsMistaken(drive, target, source, rig.Pairs))
                yield return new(drive, said.Event, said.Place, target, mine.Side, source, meant);
        }
    }

    private Finding FindingOf(CrossedDrive crossed) => new(
        this,
        crossed.Drive,
        $"{crossed.Target.Title} is on the {crossed.Side} side and follows {crossed.Source.Title}, which is on the {crossed.Side.Opposite}, though there is {crossed.Meant.Title}: it moves when an animator poses the other side, and {crossed.Meant.Title} doesn't move it. Drive it by {crossed.Meant.Title}.",
        crossed.Place)
    {
        ActsOn = crossed.Target,
        Repairs = [new TakeInstead(crossed.Said, 0, crossed.Meant.Id, $"Drive {crossed.Target.Title} by {crossed.Meant.Title}")],
        Related = [.. new[] { crossed.Drive.Place, crossed.Meant.Place, crossed.Source.Place }.Where(place => place != crossed.Place && place != PlaceId.None).Distinct()],
    };

    // Hands hold each other and ropes cross: only a node that stands where the target's counterpart does, or is named after it, was mistaken for this side's.
    private static bool IsMistaken(RigDrive drive, RigNode target, RigNode source, SidePairs pairs)
    {
        if (!drive.KeepsOffset.TryKnown(out var keeps) || (keeps && target.Kind is not (NodeKind.Joint or NodeKind.CopyJoint)))
            return false;
        return Stand.Of(target)?.At is RigNode mine && Stand.Of(source)?.At is RigNode theirs
            ? pairs.CounterpartOf(mine) == theirs && (!keeps || pairs.IsNamedAfter(source, target))
            : pairs.IsNamedAfter(source, target);
    }
}

/// <summary>A drive of a node on one side by a node on the other, and the node that was meant.</summary>
internal sealed record CrossedDrive(RigDrive Drive, int Said, PlaceId Place, RigNode Target, Side Side, RigNode Source, RigNode Meant);
