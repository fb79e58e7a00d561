using Condyle.Model;

namespace Condyle.Rules;

/// <summary>What a node needs before it can be worked out.</summary>
/// <param name="Of">The node that needs.</param>
/// <param name="Verb">How it needs it: "follows"; nothing where the node only needs its own channels.</param>
/// <param name="Node">The node that is needed.</param>
/// <param name="OfChannels">Whether the needed node's channels are enough.</param>
/// <param name="By">The sentence by which it does: a node where it hangs or stands there.</param>
/// <param name="Place">Where that was said.</param>
internal sealed record NodeNeed(RigNode Of, string Verb, RigNode Node, bool OfChannels, RigElement By, PlaceId Place)
{
    /// <summary>When it was said, as far as that is known.</summary>
    public int Said => By.Id;

    public int Scope => By.Scope;

    /// <summary>What a node needs to stand at rest: what it hangs under and what it is placed at.</summary>
    public static IEnumerable<NodeNeed> AtRest(RigNode node, bool channels)
    {
        foreach (var need in Hanging(node))
            yield return need;
        if (!node.Placement.TryKnown(out var placement))
            yield break;
        if (placement is AtNode at)
            yield return new(node, "is placed at", at.Target, false, node, node.Place);
        else if (placement is AsImage image)
            yield return new(node, "is the mirror image of", image.Of, false, node, node.Place);
        else if (placement is AtSpot { Spot: RigPointBeside { Node: { } beside } })
            yield return new(node, "is placed beside", beside, false, node, node.Place);
    }

    /// <summary>What a node needs to stand in a pose: its channels, what it hangs under and what sets its placement; and what its channels need.</summary>
    public static IEnumerable<NodeNeed> Moving(RigNode node, bool channels, Moves moves)
    {
        var all = moves.Of(node);
        if (!channels)
            yield return new(node, "", node, true, node, node.Place);
        if (!channels || all.Any(move => move.What != Moved.Placement))
        {
            foreach (var need in Hanging(node).Concat(Effective(Moved.Placement, all).SelectMany(Led)))
                yield return need;
        }

        if (!channels)
            yield break;
        foreach (var need in Effective(Moved.Channels, all).Concat(all.Where(move => move.What == Moved.OnTop && move.IsCertain)).SelectMany(Led))
            yield return need;
    }

    // Where several sentences write the same, the one begun last has it, if all of them are certain.
    private static IEnumerable<Move> Effective(Moved what, IReadOnlyList<Move> moves)
    {
        if (moves.Any(move => move.What == what && !move.IsCertain))
            yield break;
        var left = Move.Whole;
        foreach (var move in moves.Reverse().Where(move => move.What == what && (move.Written & left) != Channels.None))
        {
            left &= ~move.Written;
            yield return move;
        }
    }

    private static IEnumerable<NodeNeed> Hanging(RigNode node) =>
        node.Parent.TryKnown(out var parent) && parent is not null ? [new(node, "hangs under", parent, false, node, node.ParentPlace)] : [];

    private static IEnumerable<NodeNeed> Led(Move move) =>
        move.Leaders.Where(leader => leader.Node is not null).Select(leader => new NodeNeed(move.Node, leader.Verb, leader.Node!, leader.ByAngle, move.Sentence, move.Place));
}
