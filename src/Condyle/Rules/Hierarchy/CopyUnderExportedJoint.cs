using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY4001: copied joints don't belong into the delivered hierarchy.</summary>
internal sealed class CopyUnderExportedJoint : ModelRule
{
    public override string Id => "CDY4001";

    public override string Title => "Copied joints under an exported joint";

    public override Severity Severity => Severity.Info;

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        foreach (var copy in model.Copies)
        {
            if (copy.IsUnknown || copy.Joints.Count == 0 || !copy.Joints[0].Parent.TryKnown(out var parent) || parent is not { IsExported: true })
                continue;
            yield return new Finding(
                this,
                copy,
                $"Copy '{copy.Tag}' of {copy.Chain.Title} hangs under the exported joint {parent.Title}: its joints look like the skeleton's own and stand among them, so whoever goes through the delivered hierarchy takes them for part of it. Hang the copy under a group of the rig's systems that follows {parent.Title} by matrix.",
                copy.Joints[0].ParentPlace)
            {
                ActsOn = parent,
                Related = copy.Place == copy.Joints[0].ParentPlace ? [] : [copy.Place],
            };
        }
    }
}
