namespace Condyle.Model;

internal sealed class MeasureBegun(PlaceId place, int node) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfRig(nameof(RigDraft.Angle), new Saying.Element(node));

    public override void Apply(ModelFold fold, int id) => fold.Add(new RigMeasure(id, this, fold.Find<RigNode>(node)));
}

internal sealed class MeasureAxisSet(PlaceId place, int measure, Fact<Axis> axis) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(measure, nameof(Measure.About), axis);

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigMeasure>(measure) is { } found)
            found.Axis = fold.IsCertain(this, found) && axis.TryKnown(out var known) ? known : Fact<Axis?>.Open;
    }
}

internal sealed class ResponseBegun(PlaceId place, int source) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfRig(nameof(RigDraft.Response), new Saying.Element(source));

    public override void Apply(ModelFold fold, int id) => fold.Add(new RigResponse(id, this, fold.Find<RigElement>(source) is { IsUnknown: false } known ? known : null));
}

internal sealed class ResponseKeyed(PlaceId place, int response, Fact<float> at, Fact<float> value, Fact<float?> slope) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(response, nameof(Response.Key), at, value, new Saying.Left("slope", slope, null));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigResponse>(response) is not { } found)
            return;
        found.Keys.Add(new ResponseKey(id, Place, at, value, slope));
        found.KeysAreOpen |= !fold.IsCertain(this, found);
    }
}

internal sealed class ResponseContinued(PlaceId place, int response) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(response, nameof(Response.Continued));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigResponse>(response) is { } found)
            found.IsContinued = fold.IsCertain(this, found) ? true : Fact<bool>.Open;
    }
}

internal sealed class ResponseOntoChannel(PlaceId place, int response, ResponseWay way, int node, Fact<Axis> axis) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(response, way switch { ResponseWay.Turn => nameof(Response.OntoTurn), ResponseWay.Move => nameof(Response.OntoMove), _ => nameof(Response.OntoScale) }, new Saying.Element(node), axis);

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigResponse>(response) is not { } found)
            return;
        found.Targets.Add(new ResponseTarget(id, Place, way) { Node = fold.Find<RigNode>(node), Axis = axis });
        found.TargetsAreOpen |= !fold.IsCertain(this, found);
    }
}

internal sealed class ResponseOntoMorph(PlaceId place, int response, Text mesh, Text target) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(response, nameof(Response.OntoMorph), mesh, target);

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigResponse>(response) is not { } found)
            return;
        found.Targets.Add(new ResponseTarget(id, Place, ResponseWay.Morph) { Morph = new MorphName(mesh, target) });
        found.TargetsAreOpen |= !fold.IsCertain(this, found);
    }
}

internal sealed class SpaceBegun(PlaceId place, int control, int choice, bool ownsChoice) : RigEvent(place)
{
    public int Choice => choice;

    /// <summary>Whether the choice was made with the space, so that each parent adds an option to it.</summary>
    public bool OwnsChoice => ownsChoice;

    public override Saying? SaidIn(EventLog log) => ownsChoice ? Saying.OfRig(nameof(RigDraft.Space), new Saying.Element(control)) : Saying.OfRig(nameof(RigDraft.Space), new Saying.Element(control), new Saying.Element(choice));

    public override void Apply(ModelFold fold, int id) =>
        fold.Add(new RigSpace(id, this, fold.Find<RigNode>(control), fold.Find<RigChoice>(choice), ownsChoice));
}

internal sealed class SpaceParentAdded(PlaceId place, int space, int? option, int node) : RigEvent(place)
{
    public int Space => space;

    public int? Option => option;

    public override Saying? SaidIn(EventLog log) => option is { } named ? Saying.OfElement(space, nameof(Condyle.Space.In), ((INamedEvent)log[named]).Name, new Saying.Element(node)) : null;

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigSpace>(space) is not { } found)
            return;
        found.Parents.Add(new SpaceParent(id, Place, option is { } known ? fold.Find<RigOption>(known) : null, fold.Find<RigNode>(node)));
        found.ParentsAreOpen |= !fold.IsCertain(this, found);
    }
}
