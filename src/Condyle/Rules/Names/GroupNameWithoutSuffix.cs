using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY1001: a group's name must end in the team's group suffix.</summary>
internal sealed class GroupNameWithoutSuffix : ModelRule
{
    public override string Id => "CDY1001";

    public override string Title => "Group name without the required suffix";

    public override Severity Severity => Severity.Warning;

    public override string Fix => "append it";

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        var suffix = conventions.GroupSuffix;
        foreach (var group in model.Nodes)
        {
            if (group.Kind != NodeKind.Group || group.IsUnknown || group.Name.EndsWith(suffix) != Answer.No)
                continue;
            yield return new Finding(
                this,
                group,
                $"Group '{group.Name}' doesn't end in '{suffix}': people and tools that tell groups from controls by their names will take it for a handle. Name it '{group.Name}{suffix}'.",
                group.Place)
            {
                Repairs = [new AppendText(group.Id, 0, suffix, $"Rename to '{group.Name}{suffix}'")],
            };
        }
    }
}
