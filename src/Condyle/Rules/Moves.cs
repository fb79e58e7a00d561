using Condyle.Model;

namespace Condyle.Rules;

/// <summary>All sentences that move nodes, by the node, in the order in which they were begun.</summary>
internal sealed class Moves
{
    private readonly Dictionary<int, List<Move>> moves = [];

    private Moves()
    {
    }

    /// <summary>Whether there may be nodes that something moves besides those.</summary>
    public bool AreOpen { get; private set; }

    public static Moves Of(RigModel model)
    {
        var found = new Moves { AreOpen = !model.IsWhole };
        foreach (var sentence in model.WritingSentences.Concat(model.Responses).Concat(model.Falloffs))
            found.Add(sentence);
        return found;
    }

    /// <summary>What moves a node, or may.</summary>
    public IReadOnlyList<Move> Of(RigNode node) => moves.TryGetValue(node.Id, out var found) ? found : [];

    /// <summary>Whether something moves a node for certain.</summary>
    public bool Certainly(RigNode node) => Of(node).Any(move => move.IsCertain && move.Sentence.Scope == node.Scope);

    private void Add(RigElement sentence)
    {
        switch (sentence)
        {
            case RigDrive drive: Add(drive); break;
            case RigBlend blend: Add(blend); break;
            case RigSolver solver: Add(solver); break;
            case RigCurve curve: Add(curve); break;
            case RigAim aim: Add(aim); break;
            case RigTwist twist: Add(twist); break;
            case RigSpace space: Add(space); break;
            case RigResponse response: Add(response); break;
            case RigFalloff falloff: Add(falloff); break;
        }
    }

    private void Add(RigElement sentence, RigNode? node, Moved what, PlaceId place, bool isCertain, IReadOnlyList<Leader> leaders, Channels written = Move.Whole)
    {
        if (node is null or { IsUnknown: true })
            AreOpen = true;
        if (node is null)
            return;
        if (!moves.TryGetValue(node.Id, out var found))
            moves[node.Id] = found = new(1); // most nodes have one
        found.Add(new(sentence, node, what, written, place, isCertain && !sentence.IsUnknown, leaders));
    }

    private void Add(RigDrive drive)
    {
        var isKnown = drive.Writes.TryKnown(out var only);
        foreach (var source in drive.Sources)
        {
            var isMatrix = source.Way == DriveWay.Matrix;
            Add(drive, drive.Target, isMatrix ? Moved.Placement : Moved.Channels, source.Place, source.IsCertain && (isKnown || isMatrix), [new(source.Source, "follows")], isMatrix ? Move.Whole : (only ?? Move.Whole) & Move.Whole);
        }

        if (drive.Sources.Count == 0)
            Add(drive, drive.Target, Moved.Channels, drive.Place, isCertain: false, [new(null, "follows")]);
    }

    private void Add(RigBlend blend)
    {
        var isCertain = blend.Sources.Count > 0 && !blend.SourcesAreOpen;
        if (blend.Chain is not { } chain)
        {
            Add(blend, blend.Node, Moved.Channels, blend.Place, isCertain, [.. blend.Sources.Select(source => new Leader(source.Node, "is blended from"))]);
            return;
        }

        AreOpen |= chain.Joints is null;
        var copies = blend.Sources.Select(source => source.Copy is { IsUnknown: false } copy ? copy.Joints.ToDictionary(joint => joint.Original!.Id) : null).ToList();
        var areKnown = isCertain && !copies.Contains(null);
        foreach (var joint in chain.Joints ?? [])
        {
            // Joints that a source doesn't copy are left alone.
            if (areKnown && !copies.TrueForAll(copy => copy!.ContainsKey(joint.Id)))
                continue;
            Add(blend, joint, Moved.Channels, blend.Place, areKnown, copies.ConvertAll(copy => new Leader(copy is not null && copy.TryGetValue(joint.Id, out var source) ? source : null, "is blended from")));
        }
    }

    private void Add(RigSolver solver)
    {
        var isKnown = solver.Goal.TryKnown(out var goal) & solver.Pole.TryKnown(out var pole);
        var leaders = new List<Leader> { new(goal, "reaches for") };
        if (pole is not null)
            leaders.Add(new(pole, "faces"));
        if (solver is RigTwoBone two && (!two.PlaneTurn.TryKnown(out var turner) || turner is RigMeasure))
            leaders.Add(new(turner is RigMeasure { Node: { } measured } ? measured : null, "bends by the angle of", ByAngle: true));
        Add(solver, solver.Copy, isKnown && goal is not null && solver.Copy?.Joints.Count >= 2 && (solver is not RigTwoBone || solver.Copy.Joints.Count == 3), leaders);
    }

    private void Add(RigCurve curve) =>
        Add(curve, curve.Copy, !curve.NodesAreOpen && curve.Nodes.Count >= 2 && curve.Copy?.Joints.Count >= 2, [.. curve.Nodes.Select(node => new Leader(node, "lies along a curve through"))]);

    private void Add(RigElement sentence, RigCopy? copy, bool isCertain, IReadOnlyList<Leader> leaders)
    {
        AreOpen |= copy is null or { IsUnknown: true };
        foreach (var joint in copy?.Joints ?? [])
            Add(sentence, joint, Moved.Channels, sentence.Place, isCertain, leaders);
    }

    private void Add(RigAim aim)
    {
        var isKnown = aim.Target.TryKnown(out var target) & aim.Up.TryKnown(out var up);
        var leaders = new List<Leader> { new(target, "points at") };
        if (up is not null)
            leaders.Add(new(up.Node, "rolls by"));
        Add(aim, aim.Node, Moved.Channels, aim.Place, isKnown && target is not null, leaders, Channels.Turn);
    }

    // An end below the joints is taken as it is without them: it closes no loop.
    private void Add(RigTwist twist)
    {
        AreOpen |= twist.Joints is null;
        var isCertain = twist.Ends.TryKnown(out var ends) && ends is not null;
        // An end that hangs below the joints gives its roll before they turn.
        List<Leader> leaders = [new(ends?.Start, "takes a share of the roll from")];
        if (ends is not null && !ends.End.Above.Any((twist.Joints ?? []).Contains))
            leaders.Add(new(ends.End, "takes a share of the roll of"));
        foreach (var joint in twist.Joints ?? [])
            Add(twist, joint, Moved.Channels, twist.Place, isCertain, leaders, Channels.Turn);
    }

    private void Add(RigFalloff falloff)
    {
        AreOpen |= falloff.Joints is null || falloff.Copy is { IsUnknown: true };
        var isCertain = falloff.Source.TryKnown(out var source) && source is not null;
        foreach (var joint in falloff.Joints ?? [])
            Add(falloff, joint, Moved.OnTop, falloff.Place, isCertain, [new(source, "takes a share of the turn of", ByAngle: true)]);
    }

    private void Add(RigSpace space) =>
        Add(space, space.Control, Moved.Placement, space.Place, !space.ParentsAreOpen && space.Parents.Count > 0, [.. space.Parents.Select(parent => new Leader(parent.Node, "rides"))]);

    private void Add(RigResponse response)
    {
        AreOpen |= response.TargetsAreOpen;
        foreach (var target in response.Targets.Where(target => target.Way != ResponseWay.Morph))
            Add(response, target.Node, Moved.OnTop, target.Place, response.Keys.Count > 0 && !response.TargetsAreOpen, response.Source is RigMeasure measure ? [new(measure.Node, "responds to the angle of", ByAngle: true)] : []);
    }
}
