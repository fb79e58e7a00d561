using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY8001: with every control at zero and every switch at its default, each exported joint stands where the skeleton was delivered.</summary>
internal sealed class JointLeavesRest : EvaluatedRule
{
    public override string Id => "CDY8001";

    public override string Title => "Joint leaves its rest pose while everything is at rest";

    public override Severity Severity => Severity.Warning;

    public override string Fix => "keep the offset, where the source is placed";

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        if (rig.Evaluated is not { } evaluated)
            return [];
        var departures = new Departures(rig.Model, evaluated);
        var missed = new HashSet<RigElement>(evaluated.GoalsMissed.Select(each => each.Solver).Concat(PoleOnLine.In(rig).Select(each => each.Solver)));
        missed.UnionWith(SourceOnTheOtherSide.Crossed(rig).Select(each => each.Drive));
        var causes = new Dictionary<RigElement, Cause>();
        foreach (var joint in rig.Model.Nodes)
        {
            if (!joint.IsExported || !departures.TryOf(joint, out var departure))
                continue;
            var cause = departures.CauseOf(joint);
            var sentence = departures.TrySentenceOf(cause, out var moving) ? moving : cause;
            if (missed.Contains(sentence) || IsMatrixOntoJoint(sentence, cause))
                continue; // another rule's finding
            if (!causes.TryGetValue(sentence, out var found))
                causes[sentence] = found = new Cause(sentence, cause, joint, departure);
            else
                found.Add(joint, departure);
        }

        return causes.Values.OrderByDescending(cause => cause.Departure.Weight).Select(cause => FindingOf(cause, evaluated));
    }

    private static bool IsMatrixOntoJoint(RigElement sentence, RigNode cause) => cause.IsExported && sentence is RigDrive drive && drive.Sources[^1].Way == DriveWay.Matrix;

    private Finding FindingOf(Cause cause, EvaluatedRig rig)
    {
        var (because, advice) = Reason(cause, rig);
        var others = cause.Joints switch { 1 => "", 2 => " and takes another joint with it", _ => $" and takes {cause.Joints - 1} other joints with it" };
        var place = cause.Sentence is RigDrive drive ? drive.Sources[^1].Place : cause.Sentence.Place;
        return new Finding(
            this,
            cause.Sentence,
            $"With everything at rest, '{cause.Worst.Name}' is {cause.Departure} away from how it was delivered{others}: {because}. So the character changes as soon as the rig moves it. {advice}",
            place)
        {
            ActsOn = cause.Worst,
            Repairs = cause.Sentence is RigDrive kept && MayKeepOffset(kept, cause.Node) ? [new GoOn(kept.Sources[^1].Event, ".KeepingOffset()", $"Keep the offset that '{cause.Node.Name}' has at rest")] : [],
            Related = [.. new[] { cause.Sentence.Place, cause.Node.Place, cause.Worst.Place }.Where(other => other != place && other != PlaceId.None).Distinct()],
        };
    }

    // A source that stands at its parent for want of a place is to be placed; one that has a place elsewhere is meant to stand there.
    private static bool MayKeepOffset(RigDrive drive, RigNode moved) =>
        drive.Target == moved && drive.Sources is [{ Way: DriveWay.Channels, Source: { Kind: NodeKind.Control or NodeKind.Group } source }]
        && drive.KeepsOffset.TryKnown(out var keeps) && !keeps && source.Placement.TryKnown(out var placement) && placement is not null;

    private static (string Because, string Advice) Reason(Cause cause, EvaluatedRig rig)
    {
        switch (cause.Sentence)
        {
            case RigDrive drive when drive.Sources[^1].Source is { } source && Apart(source, cause.Node, rig) is { Counts: true } apart:
                return ($"'{cause.Node.Name}' is driven onto '{source.Name}', which rests {apart} away from it", $"Place '{source.Name}' where '{cause.Node.Name}' rests, or let the drive keep the rest offset.");
            case RigSolver { Copy: { } copy } solver when solver.Goal.TryKnown(out var goal) && goal is not null && Distance(goal, copy.Joints[^1], rig) is > Departure.LeastMetres and var miss:
                return ($"{solver.Title} reaches for '{goal.Name}', which rests {Lengths.Of(miss)} from the tip '{copy.Joints[^1].Name}'", $"Place '{goal.Name}' at the chain's tip.");
            case RigSolver solver when solver.Pole.TryKnown(out var pole) && pole is not null:
                return ($"{solver.Title} turns its bend to '{pole.Name}', which isn't on the side to which the chain bends at rest", $"Place '{pole.Name}' at the chain's pole point.");
            case RigBlend { Node: { } node } blend when blend.Sources.Select(source => source.Node).OfType<RigNode>().OrderByDescending(source => Apart(source, node, rig).Weight).FirstOrDefault() is { } furthest:
                return ($"{blend.Title} takes it from '{furthest.Name}', which rests {Apart(furthest, node, rig)} away from it", $"Place '{furthest.Name}' where '{node.Name}' rests.");
            case RigAim aim when aim.Along.TryKnown(out var axis) && axis is not null && aim.Target.TryKnown(out var target) && target is not null:
                return ($"{aim.Title} brings its {axis} onto '{target.Name}', and at rest that points elsewhere", $"Leave .Along({nameof(Axis)}.{axis}) out, so that what points there at rest goes on to, or place '{target.Name}' on that axis.");
            case RigNode node:
                return ($"'{node.Name}' leaves its rest first", "Look at what moves it.");
            default:
                return ($"it comes from {cause.Sentence.Title}", "Place what that follows where the joints rest.");
        }
    }

    private static Departure Apart(RigNode source, RigNode node, EvaluatedRig rig) => Departure.Between(rig.Rest.WorldOf(node), rig.Rest.WorldOf(source));

    private static double Distance(RigNode a, RigNode b, EvaluatedRig rig) => (rig.Rest.WorldOf(a).Origin - rig.Rest.WorldOf(b).Origin).Length;

    /// <summary>What makes joints leave their rest, and the worst of them.</summary>
    private sealed class Cause(RigElement sentence, RigNode node, RigNode first, Departure departure)
    {
        public RigElement Sentence => sentence;

        public RigNode Node => node;

        public int Joints { get; private set; } = 1;

        public RigNode Worst { get; private set; } = first;

        public Departure Departure { get; private set; } = departure;

        public void Add(RigNode joint, Departure its)
        {
            Joints++;
            if (its.Weight > Departure.Weight)
                (Worst, Departure) = (joint, its);
        }
    }
}
