using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY7007: a twist joint is turned like its counterpart on the other side, and like the others of its bone.</summary>
internal sealed class TwistJointLeftAlone : Rule
{
    public override string Id => "CDY7007";

    public override string Title => "Twist joints that nothing twists";

    public override Severity Severity => Severity.Warning;

    public override bool IsAboutNextStep => true;

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        var twists = rig.Model.Nodes.FindAll(node => node.IsExported && !node.IsUnknown && node.Role.TryKnown(out var role) && role == JointRole.Twist);
        if (twists.Count == 0 || rig.Moves is not { AreOpen: false } moves)
            yield break;
        var twisted = twists.FindAll(IsMoved).ToLookup(joint => joint.Name.ToString());
        var ofBone = twists.FindAll(IsMoved).ToLookup(ParentOf);
        foreach (var bone in twists.FindAll(joint => !IsMoved(joint)).GroupBy(ParentOf))
        {
            if (bone.Key is null || moves.Of(bone.Key) is not { Count: > 0 } ofParent)
                continue;
            if (bone.SelectMany(joint => twisted[SidedName.Of(joint.Name, rig.Conventions)?.Counterpart ?? ""]).Concat(ofBone[bone.Key]).FirstOrDefault() is not { } like)
                continue; // a bone whose roll is left to the engine
            var sentence = ofParent[ofParent.Count - 1].Sentence;
            var names = string.Join(", ", bone.Select(joint => joint.Title));
            yield return new Finding(
                this,
                sentence,
                $"Nothing twists {names}, while '{like.Name}' is twisted: below '{bone.Key.Name}' the skin takes all of the roll in one place and wrings like a towel. Share it out: rig.Twist(...).Between(...).",
                sentence.Place)
            {
                ActsOn = bone.First(),
                Related = [moves.Of(like)[0].Sentence.Place, bone.First().Place],
            };
        }

        bool IsMoved(RigNode joint) => moves.Of(joint).Count > 0;
    }

    private static RigNode? ParentOf(RigNode joint) => joint.Parent.TryKnown(out var parent) ? parent : null;
}
