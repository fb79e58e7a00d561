namespace Condyle.Model;

/// <summary>A value on a control that an animator sets besides its channels: a switch, a dial or a choice.</summary>
internal abstract class RigSetting(int id, RigEvent said, RigNode? control, Text name) : RigElement(id, said)
{
    public RigNode? Control { get; } = control;

    public Text Name { get; } = name;

    public List<RigNode?> AlsoOn { get; } = [];

    public bool PlacesAreOpen { get; set; }

    public override void Forget() => PlacesAreOpen = true;
}

internal sealed class RigSwitch(int id, RigEvent said, RigNode? control, Text name, Fact<float> atRest) : RigSetting(id, said, control, name)
{
    public Fact<float> AtRest { get; } = atRest;

    public override string Title => $"switch '{Name}'";

    public static RigSwitch Unknown(int id, RigEvent said) =>
        new(id, said, null, Text.Open, Fact<float>.Open) { IsUnknown = true, PlacesAreOpen = true };
}

internal sealed class RigDial(int id, RigEvent said, RigNode? control, Text name) : RigSetting(id, said, control, name)
{
    public Fact<DialUnit> Unit { get; init; }

    public Fact<float> From { get; init; }

    public Fact<float> To { get; init; }

    public Fact<float> AtRest { get; init; }

    public override string Title => $"dial '{Name}'";
}

/// <summary>A pick among options; the first is picked at rest.</summary>
internal sealed class RigChoice(int id, RigEvent said, RigNode? control, Text name) : RigSetting(id, said, control, name)
{
    public List<RigOption> Options { get; } = [];

    /// <summary>Whether there may be other options than those, or not all of them.</summary>
    public bool OptionsAreOpen { get; set; }

    public override string Title => $"choice '{Name}'";

    /// <summary>The weight that is one while an option is picked.</summary>
    public Fact<WeightPolynomial> WeightOf(RigOption? option) => OptionsAreOpen || option is null || Options.IndexOf(option) is not (>= 0 and var index)
        ? Fact<WeightPolynomial>.Open
        : OptionWeight.Of(index, [.. Options.Select(each => each.Id)]);
}

/// <summary>An option of a choice. Its number is a variable of weights, as a switch's is.</summary>
internal sealed class RigOption(int id, RigEvent said, RigChoice choice, Text name) : RigElement(id, said)
{
    public RigChoice Choice { get; } = choice;

    public Text Name { get; } = name;

    public override string Title => $"option '{Name}' of {Choice.Title}";
}

/// <summary>
/// The weight of one option among all of a choice: its own variable, and for the first one minus all others. So the weights of a choice
/// add up to one in the one form that weights have.
/// </summary>
internal static class OptionWeight
{
    public static Fact<WeightPolynomial> Of(int index, IReadOnlyList<int> options)
    {
        if (index > 0)
            return WeightPolynomial.Variable(options[index]);
        var others = options.Skip(1).Aggregate(WeightPolynomial.Zero, (sum, option) => sum + WeightPolynomial.Variable(option));
        return others.Inverse is { IsTooLarge: false } first ? first : Fact<WeightPolynomial>.Open;
    }
}
