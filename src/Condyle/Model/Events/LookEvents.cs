namespace Condyle.Model;

internal sealed class ShapeSet(PlaceId place, int control, Fact<ControlShape> shape, Fact<float> size, Fact<Axis> facing) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(control, nameof(Control.Shaped), shape, new Saying.Left("size", size, 0.1f), new Saying.Left("facing", facing, Axis.Y));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigNode>(control) is { } shown)
            shown.Outline = fold.IsCertain(this, shown) ? new ControlOutline(shape, size, facing) : Fact<ControlOutline?>.Open;
    }
}

internal sealed class TintSet(PlaceId place, int control, Fact<Tint> tint) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(control, nameof(Control.Tinted), tint);

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigNode>(control) is { } shown)
            shown.Tint = fold.IsCertain(this, shown) && tint.TryKnown(out var known) ? known : Fact<Tint?>.Open;
    }
}

internal sealed class LayerSet(PlaceId place, int control, Text layer) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(control, nameof(Control.OnLayer), layer);

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigNode>(control) is { } shown)
            shown.Layer = fold.IsCertain(this, shown) ? layer : Text.Open;
    }
}
