using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY7007: a twist joint is turned like its counterpart on the other side, and like the others of its bone.</summary>
internal sealed class TwistJointLeftAlone : EvaluatedRule
{
    public override string Id => "CDY7007";

    public override string Title => "Twist joints that nothing twists";

    public override Severity Severity => Severity.Warning;

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        var twists = rig.Model.Nodes.FindAll(node => node.IsExported && !node.IsUnknown && node.Role.TryKnown(out var role) && role == JointRole.Twist);
        if (twists.Count == 0 || !rig.Model.IsWhole || MovedNodes.In(rig.Model) is not { } moved)
            yield break;
        var twisted = twists.Where(moved.ContainsKey).ToLookup(joint => joint.Name.ToString());
        var ofBone = twists.Where(moved.ContainsKey).ToLookup(ParentOf);
        foreach (var bone in twists.Where(joint => !moved.ContainsKey(joint)).GroupBy(ParentOf))
        {
            if (bone.Key is null || !moved.TryGetValue(bone.Key, out var sentence))
                continue;
            if (bone.SelectMany(joint => twisted[OtherSide(joint.Name.ToString())]).Concat(ofBone[bone.Key]).FirstOrDefault() is not { } like)
                continue; // a bone whose roll is left to the engine
            var names = string.Join(", ", bone.Select(joint => joint.Title));
            yield return new Finding(
                this,
                sentence,
                $"Nothing twists {names}, while '{like.Name}' is twisted: below '{bone.Key.Name}' the skin takes all of the roll in one place and wrings like a towel. Share it out: rig.Twist(...).Between(...).",
                sentence.Place)
            {
                ActsOn = bone.First(),
                Related = [moved[like].Place, bone.First().Place],
            };
        }
    }

    private static RigNode? ParentOf(RigNode joint) => joint.Parent.TryKnown(out var parent) ? parent : null;

    private static string OtherSide(string name)
    {
        var (left, right) = (Side.Left.ToString(), Side.Right.ToString());
        return name.Contains(left) ? name.Replace(left, right) : name.Replace(right, left);
    }
}
