using Condyle.Model;

namespace Condyle.Rules;

/// <summary>Repairs that place a node where the sentence that goes by it wants it.</summary>
internal static class Placing
{
    /// <summary>The repair; none where the node isn't known to be placed by a sentence of its own, or something else goes by it and would move along.</summary>
    /// <param name="node">The node that stands in the wrong place, or in none of its own.</param>
    /// <param name="by">The sentence that goes by it.</param>
    /// <param name="given">The event and the argument that tell where.</param>
    /// <param name="member">What is asked of that: <c>.Tip</c>; nothing where it is a node.</param>
    /// <param name="where">That place, for people.</param>
    /// <param name="rig">The rig.</param>
    public static IReadOnlyList<Repair> Of(RigNode node, RigElement by, (int Event, int Argument) given, string member, string where, CheckedRig rig) =>
        node is { Kind: NodeKind.Control or NodeKind.Group, IsUnknown: false } && node.Placement.TryKnown(out var placement) && placement is not AsImage
        && rig.Motion.MovedBy(node).All(moved => rig.Moves.Of(moved).Any(move => move.Sentence == by) || KeepsItsPlace(moved))
            ? [new PlaceAt(node.PlacedBy ?? node.Id, given.Event, given.Argument, member, placement is not null, $"Place {node.Title} at {where}") { LiesElsewhere = true }]
            : [];

    /// <summary>Whether the node stands at what it hangs under for want of a place.</summary>
    public static bool IsMissing(RigNode node) => node.Kind is NodeKind.Control or NodeKind.Group && node.Placement.TryKnown(out var placement) && placement is null;

    private static bool KeepsItsPlace(RigNode node) => !node.IsExported && node.Placement.TryKnown(out var placement) && placement is not null;
}
