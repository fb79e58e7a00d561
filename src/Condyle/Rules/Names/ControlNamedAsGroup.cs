using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY1005: only the names of groups end in the team's group suffix.</summary>
internal sealed class ControlNamedAsGroup : ModelRule
{
    public override string Id => "CDY1005";

    public override string Title => "Control named as a group";

    public override Severity Severity => Severity.Info;

    public override string Fix => "take the suffix off";

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        var suffix = conventions.GroupSuffix;
        var given = new GivenNames(model);
        foreach (var control in model.Nodes)
        {
            if (control.Kind != NodeKind.Control || control.IsUnknown || control.Name.EndsWith(suffix) != Answer.Yes)
                continue;
            var plain = control.Name.TryKnown(out var name) && name.Substring(0, name.Length - suffix.Length) is var left && !given.Contain(left) ? left : "";
            yield return new Finding(
                this,
                control,
                $"The control '{control.Name}' ends in '{suffix}' as groups do: people and tools that go by names will pass it over, and nobody keys it.{(plain.Length > 0 ? $" Name it '{plain}'." : "")}",
                control.Place)
            {
                Repairs = plain.Length > 0 ? [new ReplaceText(control.Id, 0, plain, $"Rename to '{plain}'") { From = plain + suffix }] : [],
            };
        }
    }
}
