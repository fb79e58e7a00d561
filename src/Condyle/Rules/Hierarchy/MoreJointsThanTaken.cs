using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY4006: a skeleton has no more joints than the team's engine takes.</summary>
internal sealed class MoreJointsThanTaken : ModelRule
{
    public override string Id => "CDY4006";

    public override string Title => "More joints than the engine takes";

    public override Severity Severity => Severity.Error;

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        if (conventions.MostJoints is not { } most)
            yield break;
        // Of joints that may be declared or not, none counts.
        var bySkeleton = model.Nodes.Where(node => node is { IsUnknown: false, Skeleton: { } its } && node.Scope == its.Scope).ToLookup(node => node.Skeleton);
        foreach (var skeleton in model.Skeletons)
        {
            var joints = bySkeleton[skeleton].ToList();
            if (skeleton.IsUnknown || joints.Count <= most)
                continue;
            var first = joints[most];
            yield return new Finding(
                this,
                first,
                $"{Wording.First(skeleton.Title)} has {joints.Count} joints, and the engine takes {most} ({TeamSetting.MostJoints.Property}): from {first.Title} on they are left out or refused there. Have joints taken out of the skeleton, those that move no skin first.",
                first.Place)
            {
                Related = skeleton.Place == first.Place ? [] : [skeleton.Place],
            };
        }
    }
}
