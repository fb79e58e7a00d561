using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY2006: a switch or choice on a control does something.</summary>
internal sealed class SwitchWithoutUse : Rule
{
    public override string Id => "CDY2006";

    public override string Title => "Switch that nothing goes by";

    public override Severity Severity => Severity.Warning;

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        var model = rig.Model;
        if (!model.IsWhole || UsedBy(model) is not { } used)
            yield break;
        var idle = model.Switches.FindAll(given => given is { IsUnknown: false, Control: not null } && !used.Contains(given.Id));
        var passedOver = idle.Count == 0 ? [] : new HashSet<RigElement>(SwitchOfTheOtherSide.PassedOver(rig).Concat(SourceOnTheOtherSide.PassedOver(rig))); // which CDY2005 and CDY3004 say
        foreach (var given in idle.Where(given => !passedOver.Contains(given)))
            yield return Of(given, given.Control!, "Weight something by it, or remove it.");
        var spaces = new HashSet<RigChoice?>(model.Spaces.Select(space => space.Choice));
        foreach (var given in model.Choices.Where(given => given is { IsUnknown: false, OptionsAreOpen: false, Control: not null } && !spaces.Contains(given) && !given.Options.Exists(option => used.Contains(option.Id))))
            yield return Of(given, given.Control!, "Weight something by its options, or remove it.");
    }

    private Finding Of(RigSetting given, RigNode control, string advice) =>
        new(this, given, $"Nothing in the rig goes by {given.Title} of {control.Title}: an animator can turn it and nothing happens. {advice}", given.Place) { ActsOn = control };

    /// <summary>The numbers of the switches and options that something goes by; none where that isn't known.</summary>
    private static HashSet<int>? UsedBy(RigModel model)
    {
        var used = new HashSet<int>();
        var allKnown = true;
        foreach (var blend in model.Blends)
        {
            allKnown &= !blend.IsUnknown && !blend.SourcesAreOpen;
            foreach (var source in blend.Sources)
                Use(source.Weight.TryKnown(out var weight), weight);
        }

        foreach (var label in model.Labels)
            Use(label.ShownBy.TryKnown(out var weight), weight);
        foreach (var solver in model.TwoBones)
            Use(solver.Stretch.TryKnown(out var stretch), stretch?.Weight);
        foreach (var curve in model.Curves)
            Use(curve.Stretch.TryKnown(out var stretch), stretch);
        foreach (var response in model.Responses)
        {
            allKnown &= response.Source is not null and not { IsUnknown: true };
            if (response.Source is RigSwitch given)
                used.Add(given.Id);
        }

        foreach (var space in model.Spaces)
            allKnown &= space.Choice is not null;
        return allKnown ? used : null;

        void Use(bool isKnown, WeightPolynomial? weight)
        {
            allKnown &= isKnown;
            used.UnionWith(weight?.Switches ?? []);
        }
    }
}
