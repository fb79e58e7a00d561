using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY2005: a limb of one side isn't weighted by a switch that only the other side shows, where this side has its own.</summary>
internal sealed class SwitchOfTheOtherSide : Rule
{
    public override string Id => "CDY2005";

    public override string Title => "Switch of the other side";

    public override Severity Severity => Severity.Warning;

    public override IEnumerable<Finding> Check(CheckedRig rig) =>
        from slip in Slips(rig)
        let own = slip.Own.Side
        select new Finding(
            this,
            slip.Sentence,
            $"{Wording.First(slip.Sentence.Title)} is of the {own} and goes by {slip.Taken.Title} of {slip.Taken.Control!.Title}: who turns that one turns the {own} limb as well, and the switch of {slip.Right.Control!.Title} does nothing here. Take that.",
            slip.Place)
        {
            ActsOn = (slip.Sentence as RigBlend)?.Node,
            Related = slip.Taken.Place == slip.Place ? [] : [slip.Taken.Place],
        };

    /// <summary>The switches that were passed over for those of the other side.</summary>
    public static IEnumerable<RigSwitch> PassedOver(CheckedRig rig) => Slips(rig).Select(slip => slip.Right);

    private static IEnumerable<(RigElement Sentence, SidedName Own, RigSwitch Taken, RigSwitch Right, PlaceId Place)> Slips(CheckedRig rig)
    {
        var (model, conventions) = (rig.Model, rig.Conventions);
        var shown = model.Switches
            .Where(given => given is { IsUnknown: false, Control: not null } && given.Name.TryKnown(out _))
            .ToLookup(given => (given.Control!.Name.ToString(), given.Name.ToString()));
        foreach (var (sentence, target, weight, place) in Weighted(rig))
        {
            if (SidedName.Of(target, conventions) is not { } own)
                continue;
            foreach (var id in weight.Switches)
            {
                if (model.SwitchOf(id) is not { IsUnknown: false, PlacesAreOpen: false, Control: { } control } given
                    || given.AlsoOn.Exists(other => other is null || SidedName.Of(other.Name, conventions) is not { } also || also.Side == own.Side)
                    || SidedName.Of(control.Name, conventions) is not { } from || from.Side == own.Side
                    || shown[(from.Counterpart, given.Name.ToString())].FirstOrDefault() is not { } right)
                    continue;
                yield return (sentence, own, given, right, place);
                break;
            }
        }
    }

    // Of a blend the first source that is weighted by a switch stands for all.
    private static IEnumerable<(RigElement Sentence, Text Target, WeightPolynomial Weight, PlaceId Place)> Weighted(CheckedRig rig)
    {
        // Where the sides are mixed within a blend, its weights don't add up, and CDY2001 says so.
        foreach (var blend in rig.Model.Blends.Where(blend => !blend.IsUnknown && rig.Sums.IsOne(blend)))
        {
            foreach (var source in blend.Sources)
            {
                if (!source.Weight.TryKnown(out var weight) || weight.Switches.Count == 0)
                    continue;
                yield return (blend, blend.Node?.Name ?? (blend.Chain?.Joints is { Count: > 0 } joints ? joints[0].Name : Text.Open), weight, source.Place);
                break;
            }
        }

        foreach (var label in rig.Model.Labels)
        {
            if (label.ShownBy.TryKnown(out var weight) && weight is not null)
                yield return (label, label.Name, weight, label.Place);
        }
    }
}
