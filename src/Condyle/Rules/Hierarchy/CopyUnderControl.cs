using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY4002: in a rig that keeps its copies under groups, a copy directly under a control is out of place.</summary>
internal sealed class CopyUnderControl : ModelRule
{
    public override string Id => "CDY4002";

    public override string Title => "Copied joints directly under a control";

    public override Severity Severity => Severity.Info;

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        // Where all copies hang under controls, that is how the team does it, and nothing goes wrong.
        var holders = model.Copies.Select(HolderOf).ToList();
        if (holders.Find(holder => holder is { Kind: NodeKind.Group }) is not { } group)
            yield break;
        for (var i = 0; i < holders.Count; i++)
        {
            if (holders[i] is not { Kind: NodeKind.Control } control)
                continue;
            var copy = model.Copies[i];
            yield return new Finding(
                this,
                copy,
                $"Copy '{copy.Tag}' of {copy.Chain.Title} hangs directly under the control {control.Title}, while others of this rig hang under groups such as {group.Title}: an animator finds joints among the controls, and whoever hides, locks or rebuilds the systems by their groups misses this copy. Hang it under a group that follows {control.Title} by matrix.",
                copy.Joints[0].ParentPlace)
            {
                ActsOn = control,
                Related = copy.Place == copy.Joints[0].ParentPlace ? [] : [copy.Place],
            };
        }
    }

    private static RigNode? HolderOf(RigCopy copy) => !copy.IsUnknown && copy.Joints.Count > 0 && copy.Joints[0].Parent.TryKnown(out var parent) ? parent : null;
}
