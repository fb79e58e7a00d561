using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY9004: what the code accepts is found; else the acceptance is stale, or its rule is mistyped. It looks at what the other rules find.</summary>
internal sealed class AcceptanceWithoutFinding : Rule
{
    public override string Id => "CDY9004";

    public override string Title => "Acceptance of nothing";

    public override Severity Severity => Severity.Info;

    public override string Fix => "remove it, or the rule that is meant";

    public override bool IsAboutCode => true;

    // It comes last, when all that is accepted has been found.
    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        var (model, stale) = (rig.Model, rig.Accepted.Stale);
        if (stale.Count == 0 || model.Acceptances.Exists(accepted => accepted.Element is null or { IsUnknown: true } || accepted.Rule.IsOpen))
            yield break;
        var needed = new HashSet<PlaceId>(model.Acceptances.Except(stale).Select(accepted => accepted.Place));
        bool? isKnown = null;

        // One call stands for many elements; it is stale where it is for all of them.
        foreach (var accepted in stale.Where(accepted => !needed.Contains(accepted.Place)))
        {
            accepted.Rule.TryKnown(out var id);
            if (RuleBook.Find(id) is null)
                yield return OfNoRule(accepted, id, rig);
            else if (isKnown ??= ModelText.IsAllKnown(model)) // else the rule may have kept silent for want of a fact
                yield return new Finding(this, accepted.Element, $"{id} finds nothing on {accepted.Element!.Title}, so there is nothing to accept. Remove it, so that it doesn't hide the next slip.", accepted.Place)
                {
                    Repairs = [new LeaveOut(accepted.Event, $"Remove the acceptance of {id}")],
                };
        }
    }

    // What was meant is the rule with the nearest id, or the only one that finds anything there.
    private Finding OfNoRule(RigAcceptance accepted, string id, CheckedRig rig)
    {
        var found = RuleBook.All.Where(rule => rig.Accepted.IsFoundOn(accepted.Element, rule.Id)).Select(rule => rule.Id).ToList();
        var meant = found.Count == 1 ? found[0] : NearestNames.To(id, RuleBook.All.Select(each => each.Id), 1)[0];
        return new Finding(this, accepted.Element, $"There is no rule '{id}', so this accepts nothing. Did you mean '{meant}'?", accepted.Place)
        {
            Repairs = found.Contains(meant) ? [new ReplaceText(accepted.Event, 0, meant, $"Accept {meant}")] : [],
        };
    }
}
