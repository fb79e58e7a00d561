using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY6003: controls of both sides stand in frames that mirror along their axes.</summary>
internal sealed class FramesThatDoNotMirror : EvaluatedRule
{
    public override string Id => "CDY6003";

    public override string Title => "Left and right frames that don't mirror";

    public override Severity Severity => Severity.Warning;

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        // A joint that is turned turns those below it as well: the first one is to blame.
        var blamed = new Dictionary<RigNode, RigNode>();
        foreach (var (left, right) in rig.Pairs.Pairs)
        {
            if (left.IsExported && rig.Rest.TryWorldOf(left, out var one) && rig.Rest.TryWorldOf(right, out var other) && Disagree(one, other))
                blamed[left] = left.Parent.TryKnown(out var above) && above is not null && blamed.TryGetValue(above, out var first) ? first : left;
        }

        return blamed.Count == 0 ? [] : rig.Pairs.Pairs
            .Where(pair => pair.Left.Kind == NodeKind.Control && JointAt(pair.Left) is { } joint && blamed.ContainsKey(joint) && JointAt(pair.Right) == rig.Pairs.CounterpartOf(joint))
            .GroupBy(pair => blamed[JointAt(pair.Left)!])
            .Select(group => FindingOf([.. group], group.Key, rig.Pairs.CounterpartOf(group.Key)!));
    }

    private Finding FindingOf(IReadOnlyList<(RigNode Left, RigNode Right)> controls, RigNode left, RigNode right)
    {
        var (first, other) = controls[0];
        var more = controls.Count == 1 ? "" : controls.Count == 2 ? ", and so does one pair below" : $", and so do {controls.Count - 1} pairs below";
        return new Finding(
            this,
            first,
            $"{first.Title} and {other.Title} stand in frames that don't mirror{more}: at rest {left.Title} and {right.Title} lie opposite each other, and their axes don't. The same values, or the same with other signs, don't make the mirror image of a pose, so an animator can't copy one from side to side. Turn the joints alike where the skeleton is made, and deliver it again.",
            first.Place)
        {
            ActsOn = other,
            Related = [.. new[] { other.Place, left.Place, right.Place }.Where(place => place != first.Place && place != PlaceId.None).Distinct()],
        };
    }

    private static bool Disagree(Affine3d left, Affine3d right) => MirroredFrames.AreOpposite(left, right) && MirrorBehaviour.Between(left, right) is null;

    private static RigNode? JointAt(RigNode node) =>
        node.Placement.TryKnown(out var placement) && placement is AtNode { Target.IsExported: true } at ? at.Target : null;
}
