using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY3008: a joint that moves skin stands still, though the rig moves all of its like.</summary>
internal sealed class JointLeftStill : Rule
{
    public override string Id => "CDY3008";

    public override string Title => "Deform joint that nothing moves while its like is moved";

    public override Severity Severity => Severity.Warning;

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        var (model, moves) = (rig.Model, rig.Moves);
        if (moves.AreOpen)
            yield break;
        var still = model.Nodes.FindAll(node => IsDeform(node) && moves.Of(node).Count == 0);
        if (still.Count == 0)
            yield break;
        var use = new NodeUse(model, moves);
        var series = new JointSeries(model.Nodes.Where(IsDeform), moves);
        var told = new HashSet<RigNode>();
        var mistaken = new HashSet<RigNode>(rig.Once(CopyOfAnotherChain.In).SelectMany(found => found.Blend.Chain!.Joints!)); // another rule's finding
        foreach (var joint in still)
        {
            if (mistaken.Contains(joint) || use.IsLeftToItsControl(joint) || (Counterpart(joint, rig.Pairs, moves, use) ?? Neighbour(joint, series, moves, use)) is not { } witness)
                continue;
            // What hangs below a joint that was told of is the same slip.
            if (told.Add(joint) && !(joint.Parent.TryKnown(out var above) && above is not null && told.Contains(above)))
                yield return FindingOf(joint, witness);
        }
    }

    private static bool IsDeform(RigNode node) =>
        node is { IsExported: true, IsUnknown: false } && node.Role.TryKnown(out var role) && role == JointRole.Deform;

    /// <summary>What moves the joint on the other side, where this side has been built for it as well.</summary>
    private static Move? Counterpart(RigNode joint, SidePairs sides, Moves moves, NodeUse use)
    {
        if (sides.CounterpartOf(joint) is not { } other || other.Skeleton != joint.Skeleton || !moves.Certainly(other))
            return null;
        var move = moves.Of(other)[moves.Of(other).Count - 1];
        var isBuilt = move.Sentence is RigBlend { Chain: not null } ? use.IsCopied(joint)
            : move is { Sentence: RigDrive, Leaders: [{ Node: { Original: null } source }] } && (use.HasControl(joint) || sides.CounterpartOf(source) is not null);
        return isBuilt ? move : null;
    }

    /// <summary>What moves the joint before it in a row of which all others are moved.</summary>
    private static Move? Neighbour(RigNode joint, JointSeries series, Moves moves, NodeUse use) =>
        use.HasControl(joint) && series.Of(joint) is { } row
            ? moves.Of(row[Math.Max(row.IndexOf(joint) - 1, row[0] == joint ? 1 : 0)]).LastOrDefault(move => move is { Sentence: RigDrive, Leaders: [{ Node.Original: null }] })
            : null;

    private Finding FindingOf(RigNode joint, Move witness) => new(
        this,
        witness.Sentence,
        $"Nothing moves the deform joint {joint.Title}, while {witness.Node.Title} is moved here: what is skinned to it stays stiff where its like bends. Move it as well, or declare it a helper if it moves no skin.",
        witness.Place)
    {
        ActsOn = joint,
        Related = joint.Place == PlaceId.None || joint.Place == witness.Place ? [] : [joint.Place],
    };
}
