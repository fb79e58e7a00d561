using Condyle.Model;

namespace Condyle.Rules;

/// <summary>What the code of a rig accepts. An acceptance of which the rule or the element isn't known might be the one that is meant, so it counts.</summary>
internal sealed class Acceptances(RigModel model)
{
    private readonly List<RigAcceptance> ofAnything = [.. model.Acceptances.Where(accepted => accepted.Element is null or { IsUnknown: true })];
    private readonly ILookup<RigElement?, RigAcceptance> byElement = model.Acceptances.ToLookup(accepted => accepted.Element);
    private readonly HashSet<RigAcceptance> meant = [];

    /// <summary>Those that no finding was kept for, in the order in which they were said.</summary>
    public IReadOnlyList<RigAcceptance> Stale => [.. model.Acceptances.Where(accepted => !meant.Contains(accepted))];

    /// <summary>Whether a finding is one that the team means to keep.</summary>
    public bool Cover(Finding finding)
    {
        var those = ofAnything.Concat(byElement[finding.Subject]).Concat(byElement[finding.ActsOn]).Where(accepted => accepted.Rule.SameAs(finding.Rule.Id) != Answer.No).ToList();
        meant.UnionWith(those);
        return those.Count > 0;
    }
}
