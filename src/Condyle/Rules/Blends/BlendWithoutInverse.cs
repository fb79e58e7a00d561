using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY2001: the weights of a blend must add up to one for every value of its switches.</summary>
internal sealed class BlendWithoutInverse : Rule
{
    /// <summary>How many settings of one blend's switches and choices are tried: eight switches at all their ends against each other.</summary>
    private const int MostTried = 256;

    private static readonly double[] Tried = [0.5, 1, 0];

    public override string Id => "CDY2001";

    public override string Title => "Blend without an inverse: its weights don't add up to one";

    public override Severity Severity => Severity.Error;

    public override string Fix => "use the inverse";

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        var model = rig.Model;
        foreach (var blend in model.Blends)
        {
            if (blend.SourcesAreOpen || blend.IsUnknown || blend.Sources.Count == 0 || rig.Sums.Of(blend) is not { } sum || sum.Equals(WeightPolynomial.One))
                continue;
            var switches = sum.Switches;
            if (WorstOf(sum, switches, model) is not { } worst)
                continue;
            var total = sum.At(worst);
            var when = switches.Count == 0 ? "always" : $"with {Written(switches, worst, model)}";
            var repairs = RepairsOf(blend, sum, model);
            var place = repairs.Count > 0 ? PlaceOf(blend, repairs[0].Event) : blend.Sources[^1].Place;
            yield return new Finding(
                this,
                blend,
                switches.Count == 0
                    ? $"The weights of {TargetOf(blend)} always add up to {Invariant.Short(total)} instead of 1: {Consequence(total)}. {Advice(repairs)}"
                    : $"The weights of {TargetOf(blend)} don't add up to 1: {when} they add up to {Invariant.Short(total)}, so {Consequence(total)}. {Advice(repairs)}",
                place)
            {
                ActsOn = blend.Node,
                Related = [.. blend.Sources.Select(source => source.Place).Prepend(blend.Place).Where(other => other != place).Distinct()],
                Repairs = repairs,
            };
        }
    }

    // All switches at the same value first: that holds even if two switches that are only known by their type are one and the same.
    private static Func<int, double>? WorstOf(WeightPolynomial sum, IReadOnlyList<int> variables, RigModel model)
    {
        var options = variables.Select(model.OptionOf).OfType<RigOption>().ToLookup(option => option.Choice);
        var switches = variables.Where(id => model.OptionOf(id) is null).ToList();
        var picks = Picks([.. options.Select(each => each.Select(option => option.Id).ToList())]);
        return WorstOf(sum, picks.SelectMany(pick => Tried.Select(value => (Func<int, double>)(id => pick(id) ?? value))))
            ?? WorstOf(sum, picks.SelectMany(pick => Ends(switches, picks.Count, model).Select(end => (Func<int, double>)(id => pick(id) ?? end(id)))));
    }

    // Of each choice one of the options that are asked, or none of them; the value of an option, and none for a switch.
    private static List<Func<int, double?>> Picks(IReadOnlyList<IReadOnlyList<int>> choices)
    {
        var options = new HashSet<int>(choices.SelectMany(choice => choice));
        List<HashSet<int>> picked = [[]];
        foreach (var choice in choices)
        {
            if (picked.Count * (choice.Count + 1) > MostTried)
                return [];
            picked = [.. picked.SelectMany(before => choice.Select(option => new HashSet<int>(before) { option }).Prepend(before))];
        }

        return picked.ConvertAll(pick => (Func<int, double?>)(id => !options.Contains(id) ? null : pick.Contains(id) ? 1 : 0));
    }

    private static Func<int, double>? WorstOf(WeightPolynomial sum, IEnumerable<Func<int, double>> tried)
    {
        Func<int, double>? worst = null;
        var most = WeightPolynomial.Tolerance;
        foreach (var valueOf in tried)
        {
            var miss = Math.Abs(sum.At(valueOf) - 1);
            if (miss <= most)
                continue;
            (worst, most) = (valueOf, miss);
        }

        return worst;
    }

    // Each switch at either end, where all were seen being made, so that they are different ones.
    private static IEnumerable<Func<int, double>> Ends(IReadOnlyList<int> switches, int picks, RigModel model)
    {
        if (switches.Count >= 30 || (1L << switches.Count) * picks > MostTried || switches.Any(id => model.SwitchOf(id) is not { IsUnknown: false }))
            yield break;
        var placeOf = switches.Select((id, place) => (id, place)).ToDictionary(pair => pair.id, pair => pair.place);
        for (var ends = 0; ends < 1 << switches.Count; ends++)
        {
            var these = ends;
            yield return id => (these >> placeOf[id]) & 1;
        }
    }

    private static string TargetOf(RigBlend blend) => blend.Node?.Title ?? blend.Chain!.Title;

    private static string Consequence(double total) => total > WeightPolynomial.Tolerance
        ? "it floats between its sources and lands on none"
        : "no source moves it and it falls back to its rest pose";

    private static string Written(IReadOnlyList<int> switches, Func<int, double> valueOf, RigModel model)
    {
        var same = switches.GroupBy(valueOf, id => TitleAmong(switches, id, model)).OrderBy(group => group.Key);
        return string.Join(" and ", same.Select(group => $"{Wording.Joined([.. group], int.MaxValue)} at {Invariant.Short(group.Key)}"));
    }

    // Every limb has a switch of the same name: where two of them meet, the controls tell them apart.
    private static string TitleAmong(IReadOnlyList<int> switches, int id, RigModel model)
    {
        var title = TitleOf(id, model);
        return model.SwitchOf(id)?.Control is { } control && switches.Any(other => other != id && TitleOf(other, model) == title) ? $"{title} of {control.Title}" : title;
    }

    private static string TitleOf(int id, RigModel model) => model.SwitchOf(id)?.Title ?? model.OptionOf(id)?.Title ?? "the switch";

    private static string Advice(IReadOnlyList<Repair> repairs) =>
        repairs.Count > 0 ? "Use the inverse of the switch for one of its sources." : "Give its sources weights that add up to 1, such as a switch and its inverse.";

    private static PlaceId PlaceOf(RigBlend blend, int said) => blend.Sources.First(source => source.Event == said).Place;

    private static List<Repair> RepairsOf(RigBlend blend, WeightPolynomial sum, RigModel model)
    {
        var repairs = new List<Repair>();
        var decided = new List<Repair>();
        foreach (var source in blend.Sources)
        {
            source.Weight.TryKnown(out var weight);
            var needed = WeightPolynomial.One + sum.Times(-1) + weight;
            if (RepairOf(blend, source, weight, needed, model) is not { } repair)
                continue;
            repairs.Add(repair);
            if (FitsItsTag(blend, source, needed, model))
                decided.Add(repair);
        }

        return decided.Count > 0 ? [decided[0]] : [.. repairs.OrderBy(repair => ReadsAsAWay(blend, repair) ? 0 : 1)];
    }

    // Most blends are written as a way from the first source to the last: the inverse, which is one at zero, and then the switch.
    private static bool ReadsAsAWay(RigBlend blend, Repair repair) =>
        blend.Sources.Find(source => source.Event == repair.Event)!.Weight.TryKnown(out var weight) && (repair.Event == blend.Sources[^1].Event) == weight.At(_ => 0) > 0.5;

    private static Repair? RepairOf(RigBlend blend, BlendSource source, WeightPolynomial weight, WeightPolynomial needed, RigModel model)
    {
        if (weight.Switches.Count > 0 && needed.Equals(weight.Inverse))
            return new InvertWeight(source.Event, 1, TitleOf(source, needed, model, "of its weight"));
        foreach (var other in blend.Sources)
        {
            if (!ReferenceEquals(other, source) && other.Weight.TryKnown(out var theirs) && theirs.Switches.Count > 0 && needed.Equals(theirs.Inverse))
                return new InverseOf(source.Event, 1, other.Event, 1, TitleOf(source, needed, model, $"of the weight of {ShortNameOf(other)}"));
        }

        return null;
    }

    private static string TitleOf(BlendSource source, WeightPolynomial needed, RigModel model, string otherwise)
    {
        foreach (var id in needed.Switches)
        {
            if (model.SwitchOf(id) is not { } given)
                continue;
            if (needed.Equals(WeightPolynomial.Variable(id)))
                return $"Weight {ShortNameOf(source)} by {given.Title}";
            if (needed.Equals(WeightPolynomial.Variable(id).Inverse))
                return $"Weight {ShortNameOf(source)} by the inverse of {given.Title}";
        }

        return $"Weight {ShortNameOf(source)} by the inverse {otherwise}";
    }

    private static string ShortNameOf(BlendSource source) => source.Copy is { } copy ? $"copy '{copy.Tag}'" : source.Title;

    // A switch is best named after the source that it turns on: that source takes the switch and the others its inverse.
    private static bool FitsItsTag(RigBlend blend, BlendSource changed, WeightPolynomial needed, RigModel model)
    {
        var fits = false;
        foreach (var source in blend.Sources)
        {
            source.Weight.TryKnown(out var weight);
            if (ReferenceEquals(source, changed))
                weight = needed;
            foreach (var id in weight.Switches)
            {
                if (model.SwitchOf(id) is not { } given)
                    continue;
                if (IsNamedAfter(given, source))
                {
                    if (!weight.Equals(WeightPolynomial.Variable(id)))
                        return false;
                    fits = true;
                }
            }
        }

        return fits;
    }

    private static bool IsNamedAfter(RigSwitch given, BlendSource source) =>
        given.Name.SameAs(source.Tag) == Answer.Yes || (source.Node is { } node && node.Name.TryKnown(out var name) && given.Name.TryKnown(out var word) && $"_{name}_".Contains($"_{word}_"));
}
