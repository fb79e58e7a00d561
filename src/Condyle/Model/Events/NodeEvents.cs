namespace Condyle.Model;

internal sealed class GroupAdded(PlaceId place, Text name) : RigEvent(place), INamedEvent
{
    public Text Name => name;

    public override Saying? SaidIn(EventLog log) => Saying.OfRig(nameof(RigDraft.Group), name);

    public override void Apply(ModelFold fold, int id) =>
        fold.Add(new RigNode(id, this, NodeKind.Group, name) { Locked = Channels.All });
}

internal sealed class ControlAdded(PlaceId place, Text name) : RigEvent(place), INamedEvent
{
    public Text Name => name;

    public override Saying? SaidIn(EventLog log) => Saying.OfRig(nameof(RigDraft.Control), name);

    public override void Apply(ModelFold fold, int id) =>
        fold.Add(new RigNode(id, this, NodeKind.Control, name) { Locked = Channels.Scale });
}

internal sealed class ParentSet(PlaceId place, int child, int parent) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(child, nameof(Control.Under), new Saying.Element(parent));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigElement>(child) is not { } element || fold.Hung(element) is not { } hung)
            return;
        hung.ParentPlace = Place;
        hung.Parent = fold.IsCertain(this, element) ? fold.Find<RigNode>(parent) : Fact<RigNode?>.Open;
    }
}

internal sealed class PlacedAtNode(PlaceId place, int node, int target) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(node, nameof(Control.PlacedAt), new Saying.Element(target));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigNode>(node) is not { } placed)
            return;
        placed.Placement = fold.IsCertain(this, placed) ? new AtNode(fold.Find<RigNode>(target)!) : Fact<Placement?>.Open;
        placed.PlacedBy = id;
    }
}

internal sealed class PlacedAtSpot(PlaceId place, int node, int spot) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(node, nameof(Control.PlacedAt), new Saying.Element(spot));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigNode>(node) is not { } placed)
            return;
        placed.Placement = fold.IsCertain(this, placed) && fold.Find<RigSpot>(spot) is { } known ? new AtSpot(known) : Fact<Placement?>.Open;
        placed.PlacedBy = id;
    }
}

internal sealed class PlacedAsImage(PlaceId place, int node, int of) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(node, nameof(Control.Mirroring), new Saying.Element(of));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigNode>(node) is not { } placed)
            return;
        placed.Placement = fold.IsCertain(this, placed) ? new AsImage(fold.Find<RigNode>(of)!) : Fact<Placement?>.Open;
        placed.PlacedBy = id;
    }
}

internal sealed class PolePointAsked(PlaceId place, int chain, Fact<float> distance) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.MadeBy(chain, nameof(Chain.PolePoint), distance);

    public override void Apply(ModelFold fold, int id)
    {
        var of = fold.Find<RigChain>(chain) ?? fold.Find<RigCopy>(chain)?.Chain;
        fold.Add(new RigPolePoint(id, this, of, distance));
    }
}

internal sealed class PointBesideAsked(PlaceId place, int node, Fact<System.Numerics.Vector3> by) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfRig(nameof(RigDraft.Spot), new Saying.Element(node), by);

    public override void Apply(ModelFold fold, int id) => fold.Add(new RigPointBeside(id, this, fold.Find<RigNode>(node), by));
}

internal sealed class LockChanged(PlaceId place, int node, Fact<Channels> channels, bool locked) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(node, locked ? nameof(Control.Lock) : nameof(Control.Unlock), channels);

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigNode>(node) is not { } changed)
            return;
        changed.Locked = fold.IsCertain(this, changed) && changed.Locked.TryKnown(out var before) && channels.TryKnown(out var these)
            ? locked ? before | these : before & ~these
            : Fact<Channels>.Open;
        if (!locked)
            changed.Unlocked.Add((id, Place));
    }
}

internal sealed class LimitSet(PlaceId place, int node, bool turns, Fact<Axis> axis, Fact<float> from, Fact<float> to) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(node, turns ? nameof(Control.LimitTurn) : nameof(Control.LimitMove), axis, from, to);

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigNode>(node) is not { } limited)
            return;
        if (!fold.IsCertain(this, limited) || !axis.TryKnown(out var which))
        {
            limited.LimitsAreOpen = true;
            return;
        }

        limited.Limits.RemoveAll(limit => limit.Turns == turns && limit.Axis == which);
        limited.Limits.Add(new ChannelLimit(id, Place, turns, which, from, to));
    }
}
