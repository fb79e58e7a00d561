using Condyle.Model;

namespace Condyle.Rules;

/// <summary>What the code of a rig accepts. An acceptance of which the rule or the element isn't known might be the one that is meant, so it counts.</summary>
internal sealed class Acceptances(RigModel model)
{
    private readonly List<RigAcceptance> ofAnything = [.. model.Acceptances.Where(accepted => accepted.Element is null or { IsUnknown: true })];
    private readonly ILookup<RigElement?, RigAcceptance> byElement = model.Acceptances.ToLookup(accepted => accepted.Element);

    /// <summary>Whether a finding is one that the team means to keep.</summary>
    public bool Cover(Finding finding) => IsMeant(ofAnything, finding) || IsMeant(byElement[finding.Subject], finding) || IsMeant(byElement[finding.ActsOn], finding);

    private static bool IsMeant(IEnumerable<RigAcceptance> acceptances, Finding finding) =>
        acceptances.Any(accepted => accepted.Rule.SameAs(finding.Rule.Id) != Answer.No);
}
