using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY2007: a label that is called as a source is shown while that source has the limb, not while another has.</summary>
internal sealed class LabelContradictsBlend : Rule
{
    public override string Id => "CDY2007";

    public override string Title => "Label and blend disagree";

    public override Severity Severity => Severity.Warning;

    public override string Fix => "show it by the inverse";

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        var bySwitch = Sources(rig).ToLookup(source => source.Switch, source => (source.Blend, source.Source, source.Weight));
        foreach (var label in rig.Model.Labels)
        {
            if (label.IsUnknown || !label.Shows.TryKnown(out var text) || !label.ShownBy.TryKnown(out var shown) || shown is null || shown.Switches.Count == 0)
                continue;
            var named = bySwitch[shown.Switches[0]].Where(source => source.Source.Tag.TryKnown(out var tag) && string.Equals(tag, text, StringComparison.OrdinalIgnoreCase)).ToList();
            if (named.Count == 0 || named.Exists(source => source.Weight.Equals(shown)) || !named.Exists(source => source.Weight.Equals(shown.Inverse)))
                continue;
            var (blend, source, _) = named.Find(source => source.Weight.Equals(shown.Inverse));
            yield return new Finding(
                this,
                label,
                $"{Wording.First(label.Title)} shows '{text}' just while {source.Title} has no weight: the animator reads '{text}' on a limb that something else moves. Show it by the inverse.",
                label.Place)
            {
                Related = [source.Place, blend.Place],
                Repairs = [new InvertWeight(label.ShownByEvent, 0, $"Show {label.Title} while {source.Title} has the limb")],
            };
        }
    }

    private static IEnumerable<(int Switch, RigBlend Blend, BlendSource Source, WeightPolynomial Weight)> Sources(CheckedRig rig)
    {
        // Where weights don't add up, one of them is turned round, and the label may be right.
        foreach (var blend in rig.Model.Blends.Where(blend => !blend.IsUnknown && !blend.SourcesAreOpen && rig.Sums.IsOne(blend)))
        {
            foreach (var source in blend.Sources)
            {
                if (source.Weight.TryKnown(out var weight) && weight.Switches.Count > 0)
                    yield return (weight.Switches[0], blend, source, weight);
            }
        }
    }
}
