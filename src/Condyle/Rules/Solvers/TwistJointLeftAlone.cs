namespace Condyle.Rules;

/// <summary>CDY7007: where a rig turns some of its twist joints, it turns them all.</summary>
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
        var twisted = twists.Where(moved.ContainsKey).ToList();
        if (twisted.Count == 0)
            yield break; // left to the engine
        foreach (var bone in twists.Where(joint => !moved.ContainsKey(joint)).GroupBy(joint => joint.Parent.TryKnown(out var parent) ? parent : null))
        {
            if (bone.Key is null || !moved.TryGetValue(bone.Key, out var sentence))
                continue;
            var names = string.Join(", ", bone.Select(joint => joint.Title));
            yield return new Finding(
                this,
                sentence,
                $"Nothing twists {names}, while '{twisted[0].Name}' and others are twisted: below '{bone.Key.Name}' the skin takes all of the roll in one place and wrings like a towel. Share it out: rig.Twist(...).Between(...).",
                sentence.Place)
            {
                ActsOn = bone.First(),
                Related = [moved[twisted[0]].Place, bone.First().Place],
            };
        }
    }
}
