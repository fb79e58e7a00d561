using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY6002: a node and its counterpart on the other side are built alike.</summary>
internal sealed class SidesDiffer : EvaluatedRule
{
    public override string Id => "CDY6002";

    public override string Title => "Sides that differ";

    public override Severity Severity => Severity.Warning;

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        if (!rig.Motion.IsWhole)
            yield break;
        var above = new Lazy<HashSet<RigNode?>>(() => [.. rig.Model.Nodes.Where(node => node.IsExported).Select(joint => joint.Parent.TryKnown(out var parent) ? parent : null)]);
        var writers = new SidedWriters(rig);
        foreach (var (left, right) in rig.Pairs.Pairs)
        {
            if ((Hanging(left, right, rig) ?? FreedomOf(left, right, rig, above) ?? writers.Between(left, right)) is not { } difference)
                continue;
            var place = difference.Right == PlaceId.None ? right.Place : difference.Right;
            yield return new Finding(this, right, $"{left.Title} and {right.Title} aren't built as mirror images: {difference.Message}. A pose that is copied from one side to the other doesn't look the same there. Build both sides alike.", place)
            {
                ActsOn = left,
                Related = [.. new[] { difference.Left, left.Place, right.Place }.Where(other => other != place && other != PlaceId.None).Distinct()],
            };
        }
    }

    // Two nodes in the middle may share the sides out, as legs do that step in turns; but one side doesn't hang on the other, nor in the world alone.
    private static SideDifference? Hanging(RigNode left, RigNode right, CheckedRig rig)
    {
        if (!Stands(left, rig) || !Stands(right, rig) || !left.Parent.TryKnown(out var above) || !right.Parent.TryKnown(out var other))
            return null;
        // Where one holds on to the other, as a hand to a wrist, that is meant: only what both hang under may not be of one side.
        var (side, otherSide) = (SideOf(above, rig), SideOf(other, rig));
        var isOfOneSide = side is not null && side == otherSide;
        var isInTheWorldAlone = (above is null && other is not null && otherSide is null) || (other is null && above is not null && side is null);
        return isOfOneSide || isInTheWorldAlone
            ? new SideDifference($"one hangs under {above?.Title ?? "nothing"}, the other under {other?.Title ?? "nothing"}", left.ParentPlace, right.ParentPlace)
            : null;
    }

    private static Side? SideOf(RigNode? node, CheckedRig rig) => node is null ? null : rig.Pairs.SideOf(node);

    private static SideDifference? FreedomOf(RigNode left, RigNode right, CheckedRig rig, Lazy<HashSet<RigNode?>> above)
    {
        if (left.Kind != NodeKind.Control || Freedom.AreFreeAlike(left, right))
            return null;
        var areOpposite = rig.Rest.TryWorldOf(left, out var one) & rig.Rest.TryWorldOf(right, out var other) && MirroredFrames.AreOpposite(one, other);
        var frames = areOpposite ? MirrorBehaviour.Between(one, other) : null;
        if (areOpposite && frames is null)
            return null; // no axis of one is an axis of the other, which another rule says
        var isEnd = left.Placement.TryKnown(out var placement) && placement is AtNode at && !above.Value.Contains(at.Target);
        return Freedom.Between(left, right, frames, isEnd);
    }

    // What follows or rides another node takes nothing of what it hangs under, but for a copy that is solved.
    private static bool Stands(RigNode node, CheckedRig rig) => node.Kind switch
    {
        NodeKind.CopyJoint => true,
        NodeKind.Control or NodeKind.Group => !rig.Motion.IsWritten(node) && !rig.Motion.IsRiding(node),
        _ => false,
    };
}
