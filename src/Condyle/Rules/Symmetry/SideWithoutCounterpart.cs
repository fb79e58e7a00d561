using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY6001: what is built for one side of a skeleton that has both is built for the other too.</summary>
internal sealed class SideWithoutCounterpart : Rule
{
    public override string Id => "CDY6001";

    public override string Title => "Side without its counterpart";

    public override Severity Severity => Severity.Warning;

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        var pairs = rig.Pairs;
        if (!rig.Motion.IsWhole || !pairs.Pairs.Any(pair => IsRigged(pair.Left)) || rig.Model.Nodes.Exists(node => IsRigged(node) && node.Name.IsOpen))
            yield break;
        var used = new HashSet<RigNode>(rig.Model.Nodes.Where(IsRigged).Select(JointOf).OfType<RigNode>());
        foreach (var side in Side.Both)
        {
            var alone = rig.Model.Nodes.FindAll(node => IsRigged(node) && pairs.SideOf(node) == side && pairs.IsAlone(node));
            // The joint on the other side is there, and nothing else moves it or stands at it: a hook in place of a hand is no slip.
            var joints = alone.Select(JointOf).OfType<RigNode>().Distinct().Select(pairs.CounterpartOf).OfType<RigNode>()
                .Where(joint => joint.IsExported && !rig.Motion.IsWritten(joint) && !used.Contains(joint)).ToList();
            if (joints.Count > 0)
                yield return FindingOf(side, alone, joints);
        }
    }

    private Finding FindingOf(Side side, List<RigNode> alone, List<RigNode> joints)
    {
        var names = Wording.Joined([.. alone.Select(node => node.Title)]);
        var first = alone.Find(node => JointOf(node) is not null)!;
        return new Finding(
            this,
            first,
            $"The {side} side has {(alone.Count == 1 ? names : $"{alone.Count} controls and groups")} that the {side.Opposite} side lacks{(alone.Count == 1 ? "" : $": {names}")}. The skeleton has both sides, so {Wording.Joined([.. joints.Select(joint => joint.Title)])} can't be posed. Build the {side.Opposite} side as well: foreach (var side in Side.Both).",
            first.Place)
        {
            Related = [.. alone.Select(node => node.Place).Concat(joints.Select(joint => joint.Place)).Where(place => place != first.Place).Distinct()],
        };
    }

    private static bool IsRigged(RigNode node) => node.Kind is NodeKind.Control or NodeKind.Group;

    private static RigNode? JointOf(RigNode node) =>
        node.Placement.TryKnown(out var placement) && placement is AtNode at ? at.Target.Original ?? (at.Target.IsExported ? at.Target : null) : null;
}
