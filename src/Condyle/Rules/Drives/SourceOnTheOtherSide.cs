using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY3004: what is on one side follows that side's node where there is one.</summary>
internal sealed class SourceOnTheOtherSide : Rule
{
    public override string Id => "CDY3004";

    public override string Title => "Source on the other side";

    public override Severity Severity => Severity.Warning;

    public override string Fix => "this side's, where it has a name";

    public override bool ExplainsPoses => true;

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        var all = rig.Once(Crossed);
        var inLoops = all.Count == 0 ? [] : new HashSet<RigElement>(DrivesInALoop.SentencesIn(rig)); // which CDY3003 says
        return all.Where(crossed => !inLoops.Contains(crossed.Sentence)).Select(FindingOf);
    }

    private Finding FindingOf(CrossedSource crossed) => new(this, crossed.Sentence, crossed.Message, crossed.Place)
    {
        ActsOn = crossed.Follower,
        Repairs = crossed.Repairs,
        Related = [.. new[] { crossed.Sentence.Place, crossed.Meant.Place, crossed.Source.Place }.Where(place => place != crossed.Place && place != PlaceId.None).Distinct()],
    };

    /// <summary>The sentences that take the other side's for this side's.</summary>
    public static IEnumerable<CrossedSource> Crossed(CheckedRig rig) => CrossedDrives(rig).Concat(CrossedFollowers.In(rig)).Concat(CrossedResponses.In(rig));

    /// <summary>What was passed over for the other side's, and so has nothing to do.</summary>
    public static IEnumerable<RigElement> PassedOver(CheckedRig rig) => rig.Once(Crossed).Select(crossed => crossed.Meant);

    private static IEnumerable<CrossedSource> CrossedDrives(CheckedRig rig)
    {
        var pairs = rig.Pairs;
        foreach (var drive in rig.Model.Drives)
        {
            if (drive.Target is not { IsUnknown: false } target || drive.Sources is not [{ IsCertain: true, Source: { IsUnknown: false } source } said])
                continue;
            if (pairs.SideOf(target) is { } mine && pairs.SideOf(source) is { } theirs && mine != theirs && pairs.CounterpartOf(source) is { } meant && IsMistaken(drive, target, source, pairs))
                yield return new(drive, FollowWay.Driven, target, mine, source, meant) { Given = (said.Event, 0), Place = said.Place };
        }
    }

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
