using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY1007: the names of controls and groups are of the team's pattern.</summary>
internal sealed class NameOutsidePattern : ModelRule
{
    public override string Id => "CDY1007";

    public override string Title => "Name outside the team's pattern";

    public override Severity Severity => Severity.Warning;

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        if (conventions.NamePattern is not { } pattern)
            yield break;
        foreach (var node in model.Nodes)
        {
            if (node.Kind is not (NodeKind.Control or NodeKind.Group) || node.IsUnknown || pattern.Fits(node.Name) != Answer.No)
                continue;
            yield return new Finding(
                this,
                node,
                $"The name '{node.Name}' isn't of the team's pattern '{pattern}': people and tools that go by the pattern pass the {(node.Kind == NodeKind.Group ? "group" : "control")} over. Rename it, or widen the pattern ({TeamSetting.NamePattern.Property}).",
                node.Place);
        }
    }
}
