namespace Condyle.Model;

internal sealed class SwitchAdded(PlaceId place, int control, Text name, Fact<float> atRest) : RigEvent(place), INamedEvent
{
    public Text Name => name;

    public override void Apply(ModelFold fold, int id) => fold.Add(new RigSwitch(id, this, fold.Find<RigNode>(control), name, atRest));
}

internal sealed class SwitchShown(PlaceId place, int shown, int control) : RigEvent(place)
{
    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigSwitch>(shown) is not { } found)
            return;
        found.AlsoOn.Add(fold.Find<RigNode>(control));
        found.PlacesAreOpen |= !fold.IsCertain(this, found);
    }
}

internal sealed class LabelAdded(PlaceId place, Text name, Text text) : RigEvent(place), INamedEvent
{
    public Text Name => name;

    public override void Apply(ModelFold fold, int id) => fold.Add(new RigLabel(id, this, name, text));
}

internal sealed class LabelShown(PlaceId place, int label, Fact<WeightPolynomial> weight) : RigEvent(place)
{
    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigLabel>(label) is { } found)
            found.ShownBy = fold.IsCertain(this, found) && weight.TryKnown(out var known) ? known : Fact<WeightPolynomial?>.Open;
    }
}
