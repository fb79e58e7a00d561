using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY1002: two controls can't have one name, nor two joints, nor what is set on one control, since clips and games find them by it.</summary>
internal sealed class NameTwice : Rule
{
    public override string Id => "CDY1002";

    public override string Title => "Two controls, joints or settings with one name";

    public override Severity Severity => Severity.Error;

    public override IEnumerable<Finding> Check(CheckedRig rig) => Nodes(rig).Concat(Settings(rig.Model));

    private IEnumerable<Finding> Nodes(CheckedRig rig) =>
        from pair in rig.Namesakes
        where pair.AreFoundByName && !pair.IsToldElsewhere
        select new Finding(
            this,
            pair.Node,
            $"There is a {Namesakes.KindOf(pair.Node)} called {pair.Node.Title} already: a clip that moves one by its name can't tell which, so the rig can't be played. {AdviceOn(pair)}",
            pair.Node.Place)
        {
            Related = [pair.Other.Place],
        };

    // A skeleton is taken where it is needed, and then once more in a helper.
    private static string AdviceOn(Namesakes pair) =>
        pair.Node.Skeleton is { } its && pair.Other.Skeleton is { } other && its != other && its.Name.SameAs(other.Name) == Answer.Yes
            ? $"The rig takes in {its.Title} twice: take it once, and hand on what that gives."
            : "Give this one a name of its own.";

    private IEnumerable<Finding> Settings(RigModel model)
    {
        var first = new Dictionary<string, RigSetting>(StringComparer.Ordinal);
        var told = new HashSet<PlaceId>();
        foreach (var setting in model.Switches.Concat<RigSetting>(model.Dials).Concat(model.Choices).OrderBy(setting => setting.Id))
        {
            foreach (var name in NamesOf(setting))
            {
                if (!first.TryGetValue(name, out var other))
                {
                    first.Add(name, setting);
                }
                else if (other != setting && Namesakes.BothExist(setting, other) && told.Add(setting.Place)) // a loop says it once
                {
                    yield return new Finding(
                        this,
                        setting,
                        $"There is a {KindOf(other)} called '{name}' already: a clip that sets one by its name can't tell which, so the rig can't be played. Give this one a name of its own.",
                        setting.Place)
                    {
                        Related = [other.Place],
                    };
                }
            }
        }
    }

    /// <summary>A setting is found by the name of each control that it is on.</summary>
    private static IEnumerable<string> NamesOf(RigSetting setting)
    {
        foreach (var control in setting.AlsoOn.Prepend(setting.Control))
        {
            if (control is { IsUnknown: false } && control.Name.TryKnown(out var whose) && setting.Name.TryKnown(out var name))
                yield return $"{whose}.{name}";
        }
    }

    private static string KindOf(RigSetting setting) => setting switch
    {
        RigSwitch => "switch",
        RigDial => "dial",
        _ => "choice",
    };
}
