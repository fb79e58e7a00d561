using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY8001: with every control at zero and every switch at its default, each exported joint stands where the skeleton was delivered.</summary>
internal sealed class JointLeavesRest : EvaluatedRule
{
    public override string Id => "CDY8001";

    public override string Title => "Joint leaves its rest pose while everything is at rest";

    public override Severity Severity => Severity.Warning;

    public override string Fix => "keep the offset where the source is placed, else place it";

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        if (rig.Evaluated is not { } evaluated)
            return [];
        var departures = new Departures(rig.Model, evaluated);
        if (departures.AreNone)
            return [];
        var missed = new HashSet<RigElement>(evaluated.GoalsMissed.Select(each => each.Solver).Concat(rig.Once(PoleOnLine.In).Select(each => each.Solver)));
        missed.UnionWith(NodeDrivenTwice.Takers(rig));
        var idle = new Lazy<ILookup<RigNode, RigNode>>(() => ControlMovesNothing.IdleByJoint(rig));
        var causes = new Dictionary<RigElement, Cause>();
        foreach (var joint in rig.Model.Nodes)
        {
            if (!joint.IsExported || !departures.TryOf(joint, out var departure))
                continue;
            var cause = departures.CauseOf(joint);
            var sentence = departures.TrySentenceOf(cause, out var moving) ? moving : cause;
            if (missed.Contains(sentence) || IsMatrixOntoJoint(sentence, cause) || SourcesOf(sentence).Any(source => NameOnTheOtherSide.Contradiction(source, rig.Conventions) is not null))
                continue; // another rule's finding
            if (!causes.TryGetValue(sentence, out var found))
                causes[sentence] = found = new Cause(sentence, cause, joint, departure);
            else
                found.Add(joint, departure, isItsOwn: joint == cause || departures.GoesWith(joint, cause));
        }

        return causes.Values.OrderByDescending(cause => cause.Departure.Weight).Select(cause => FindingOf(cause, MeantBy(cause, idle), evaluated, rig));
    }

    private static IEnumerable<RigNode> SourcesOf(RigElement sentence) => sentence switch
    {
        RigDrive drive => drive.Sources.Select(source => source.Source).OfType<RigNode>(),
        RigBlend blend => blend.Sources.Select(source => source.Node).OfType<RigNode>(),
        _ => [],
    };

    private static bool IsMatrixOntoJoint(RigElement sentence, RigNode cause) => cause.IsExported && sentence is RigDrive drive && drive.Sources[^1].Way == DriveWay.Matrix;

    private Finding FindingOf(Cause cause, RigNode? meant, EvaluatedRig evaluated, CheckedRig rig)
    {
        var (because, advice) = Reason(cause, evaluated);
        if (meant is not null)
            advice = $"Drive it by {meant.Title}, which stands there and moves nothing.";
        var others = cause.Joints switch { 1 => "", 2 => " and takes another joint with it", _ => $" and takes {cause.Joints - 1} other joints with it" };
        var place = cause.Sentence is RigDrive drive ? drive.Sources[^1].Place : cause.Sentence.Place;
        return new Finding(
            this,
            cause.Sentence,
            $"With everything at rest, '{cause.Worst.Name}' is {cause.Departure} away from how it was delivered{others}: {because}. So the character changes as soon as the rig moves it. {advice}",
            place)
        {
            ActsOn = cause.Worst,
            Repairs = meant is not null ? [new TakeInstead(((RigDrive)cause.Sentence).Sources[^1].Event, 0, meant.Id, $"Drive {cause.Node.Title} by {meant.Title}")] : RepairsOf(cause, evaluated, rig),
            Related = [.. new[] { cause.Sentence.Place, cause.Node.Place, cause.Worst.Place }.Where(other => other != place && other != PlaceId.None).Distinct()],
        };
    }

    // The control that stands where the driven node does, if nothing goes by it.
    private static RigNode? MeantBy(Cause cause, Lazy<ILookup<RigNode, RigNode>> idle) =>
        cause.Sentence is RigDrive { Sources: [{ Way: DriveWay.Channels }] } drive && drive.Target == cause.Node && idle.Value[cause.Node.Original ?? cause.Node].Take(2).ToList() is [var only] ? only : null;

    private static IReadOnlyList<Repair> RepairsOf(Cause cause, EvaluatedRig evaluated, CheckedRig rig) => cause.Sentence switch
    {
        RigDrive drive when MayKeepOffset(drive, cause.Node) => [new GoOn(drive.Sources[^1].Event, ".KeepingOffset()", $"Keep the offset that '{cause.Node.Name}' has at rest")],
        RigDrive { Sources: [{ Source: { } source }] } drive when drive.Target == cause.Node && Placing.IsMissing(source) => Placing.Of(source, drive, (drive.Id, 0), "", $"'{cause.Node.Name}'", rig),
        RigSolver solver when MissedGoal(solver, evaluated) is { } goal => Placing.Of(goal.Node, solver, (solver.Id, 0), $".{nameof(Copy.Tip)}", "the chain's tip", rig),
        RigSolver solver when solver.Pole.TryKnown(out var pole) && pole is not null => PolePlace.For(pole, solver, rig),
        _ => [],
    };

    // A source that stands at its parent for want of a place is to be placed; one that has a place elsewhere is meant to stand there. So is what a group follows.
    private static bool MayKeepOffset(RigDrive drive, RigNode moved) =>
        drive.Target == moved && drive.Sources is [{ Source: { IsUnknown: false } source } said] && drive.KeepsOffset.TryKnown(out var keeps) && !keeps
        && (said.Way == DriveWay.Matrix ? moved.Kind == NodeKind.Group && !Placing.IsMissing(source)
            : source.Kind is NodeKind.Control or NodeKind.Group && source.Placement.TryKnown(out var placement) && placement is not null);

    private static (RigNode Node, double Metres)? MissedGoal(RigSolver solver, EvaluatedRig rig) =>
        solver.Copy is { } copy && solver.Goal.TryKnown(out var goal) && goal is not null && Distance(goal, copy.Joints[^1], rig) is > Departure.LeastMetres and var miss ? (goal, miss) : null;

    private static (string Because, string Advice) Reason(Cause cause, EvaluatedRig rig)
    {
        switch (cause.Sentence)
        {
            case RigDrive drive when drive.Sources[^1].Source is { } source && Apart(source, cause.Node, rig) is { Counts: true } apart:
                return ($"'{cause.Node.Name}' is driven onto '{source.Name}', which rests {apart} away from it", $"Place '{source.Name}' where '{cause.Node.Name}' rests, or let the drive keep the rest offset.");
            case RigSolver solver when MissedGoal(solver, rig) is { } missed:
                return ($"{solver.Title} reaches for '{missed.Node.Name}', which rests {Lengths.Of(missed.Metres)} from the tip '{solver.Copy!.Joints[^1].Name}'", $"Place '{missed.Node.Name}' at the chain's tip.");
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

        /// <param name="joint">A further joint.</param>
        /// <param name="its">How far it is away.</param>
        /// <param name="isItsOwn">Whether nothing else takes it further.</param>
        public void Add(RigNode joint, Departure its, bool isItsOwn)
        {
            Joints++;
            if (isItsOwn && its.Weight > Departure.Weight)
                (Worst, Departure) = (joint, its);
        }
    }
}
