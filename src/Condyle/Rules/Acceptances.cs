using Condyle.Model;

namespace Condyle.Rules;

/// <summary>What the code of a rig accepts. An acceptance of which the rule or the element isn't known might be the one that is meant, so it counts.</summary>
internal sealed class Acceptances(RigModel model)
{
    private readonly List<RigAcceptance> ofAnything = [.. model.Acceptances.Where(accepted => accepted.Element is null or { IsUnknown: true })];
    private readonly ILookup<RigElement?, RigAcceptance> byElement = model.Acceptances.ToLookup(accepted => accepted.Element);
    private readonly HashSet<RigAcceptance> meant = [];
    private readonly HashSet<(string Rule, RigElement? Element)> found = [];

    /// <summary>Those that no finding was kept for, in the order in which they were said.</summary>
    public IReadOnlyList<RigAcceptance> Stale => [.. model.Acceptances.Where(accepted => !meant.Contains(accepted))];

    /// <summary>Whether a rule has found anything that could be accepted on an element.</summary>
    public bool IsFoundOn(RigElement? element, string rule) => found.Contains((rule, element));

    /// <summary>Whether a finding is one that the team means to keep.</summary>
    public bool Cover(Finding finding)
    {
        var those = ofAnything.Concat(byElement[finding.Subject]).Concat(byElement[finding.ActsOn]).Where(accepted => accepted.Rule.SameAs(finding.Rule.Id) != Answer.No).ToList();
        meant.UnionWith(those);
        found.UnionWith([(finding.Rule.Id, finding.Subject), (finding.Rule.Id, finding.ActsOn)]);
        return those.Count > 0;
    }
}
