namespace Condyle.Model;

internal sealed class SwitchAdded(PlaceId place, int control, Text name, Fact<float> atRest) : RigEvent(place), INamedEvent
{
    public Text Name => name;

    public override Saying? SaidIn(EventLog log) => Saying.MadeBy(control, nameof(Control.Switch), name, new Saying.Left("atRest", atRest, 0f));

    public override void Apply(ModelFold fold, int id) => fold.Add(new RigSwitch(id, this, fold.Find<RigNode>(control), name, atRest));
}

internal sealed class DialAdded(PlaceId place, int control, Text name, Fact<float> from, Fact<float> to, Fact<float> atRest, Fact<DialUnit> unit)
    : RigEvent(place), INamedEvent
{
    public Text Name => name;

    public override Saying? SaidIn(EventLog log) => Saying.MadeBy(control, nameof(Control.Dial), name, from, to, new Saying.Left("atRest", atRest, 0f), new Saying.Left("unit", unit, DialUnit.None));

    public override void Apply(ModelFold fold, int id) =>
        fold.Add(new RigDial(id, this, fold.Find<RigNode>(control), name) { From = from, To = to, AtRest = atRest, Unit = unit });
}

internal sealed class ChoiceAdded(PlaceId place, int control, Text name, bool isOpen) : RigEvent(place), INamedEvent
{
    public Text Name => name;

    /// <summary>Whether its options aren't known.</summary>
    public bool IsOpen => isOpen;

    public override void Apply(ModelFold fold, int id) => fold.Add(new RigChoice(id, this, fold.Find<RigNode>(control), name) { OptionsAreOpen = isOpen });
}

internal sealed class OptionAdded(PlaceId place, int choice, Text name) : RigEvent(place), INamedEvent
{
    public int Choice => choice;

    public Text Name => name;

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigChoice>(choice) is not { } found)
            return;
        var option = new RigOption(id, this, found, name);
        found.Options.Add(option);
        found.OptionsAreOpen |= !fold.IsCertain(this, found);
        fold.Add(option);
    }
}

/// <summary>A switch, a dial or a choice is shown on a further control.</summary>
internal sealed class SettingShown(PlaceId place, int setting, int control) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(setting, nameof(Switch.AlsoOn), new Saying.Element(control));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigSetting>(setting) is not { } found)
            return;
        found.AlsoOn.Add(fold.Find<RigNode>(control));
        found.PlacesAreOpen |= !fold.IsCertain(this, found);
    }
}

internal sealed class LabelAdded(PlaceId place, Text name, Text text) : RigEvent(place), INamedEvent
{
    public Text Name => name;

    public override Saying? SaidIn(EventLog log) => Saying.OfRig(nameof(RigDraft.Label), name, text);

    public override void Apply(ModelFold fold, int id) => fold.Add(new RigLabel(id, this, name, text));
}

internal sealed class LabelShown(PlaceId place, int label, Fact<WeightPolynomial> weight) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(label, nameof(Label.ShownBy), weight);

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigLabel>(label) is not { } found)
            return;
        found.ShownBy = fold.IsCertain(this, found) && weight.TryKnown(out var known) ? known : Fact<WeightPolynomial?>.Open;
        found.ShownByEvent = id;
    }
}
