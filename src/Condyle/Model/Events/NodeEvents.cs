namespace Condyle.Model;

internal sealed class GroupAdded(PlaceId place, Text name) : RigEvent(place), INamedEvent
{
    public Text Name => name;

    public override void Apply(ModelFold fold, int id) =>
        fold.Add(new RigNode(id, this, NodeKind.Group, name) { Locked = Channels.All });
}

internal sealed class ControlAdded(PlaceId place, Text name) : RigEvent(place), INamedEvent
{
    public Text Name => name;

    public override void Apply(ModelFold fold, int id) =>
        fold.Add(new RigNode(id, this, NodeKind.Control, name) { Locked = Channels.Scale });
}

internal sealed class ParentSet(PlaceId place, int child, int parent) : RigEvent(place)
{
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
    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigNode>(node) is { } placed)
            placed.Placement = fold.IsCertain(this, placed) ? new AtNode(fold.Find<RigNode>(target)!) : Fact<Placement?>.Open;
    }
}

internal sealed class PlacedAtSpot(PlaceId place, int node, int spot) : RigEvent(place)
{
    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigNode>(node) is { } placed)
            placed.Placement = fold.IsCertain(this, placed) && fold.Find<RigSpot>(spot) is { } known ? new AtSpot(known) : Fact<Placement?>.Open;
    }
}

internal sealed class PolePointAsked(PlaceId place, int chain, Fact<float> distance) : RigEvent(place)
{
    public override void Apply(ModelFold fold, int id)
    {
        var of = fold.Find<RigChain>(chain) ?? fold.Find<RigCopy>(chain)?.Chain;
        fold.Add(new RigSpot(id, this, of, distance));
    }
}

internal sealed class LockChanged(PlaceId place, int node, Fact<Channels> channels, bool locked) : RigEvent(place)
{
    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigNode>(node) is not { } changed)
            return;
        changed.Locked = fold.IsCertain(this, changed) && changed.Locked.TryKnown(out var before) && channels.TryKnown(out var these)
            ? locked ? before | these : before & ~these
            : Fact<Channels>.Open;
    }
}

internal sealed class LimitSet(PlaceId place, int node, bool turns, Fact<Axis> axis, Fact<float> from, Fact<float> to) : RigEvent(place)
{
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
        limited.Limits.Add(new ChannelLimit(turns, which, from, to));
    }
}

/// <summary>Something that a reading knows only by its type: a parameter of code that nobody was seen to call, or what unknown code returned.</summary>
internal sealed class UnknownElement(UnknownKind kind) : RigEvent(PlaceId.None)
{
    public override void Apply(ModelFold fold, int id)
    {
        switch (kind)
        {
            case UnknownKind.Node or UnknownKind.Group or UnknownKind.Control or UnknownKind.Joint or UnknownKind.CopyJoint:
                fold.Add(RigNode.Unknown(id, this, KindOf(kind)));
                break;
            case UnknownKind.Switch:
                fold.Add(RigSwitch.Unknown(id, this));
                break;
            case UnknownKind.Copy:
                fold.Add(new RigCopy(id, this, new RigChain(id, this, null) { IsUnknown = true }, Text.Open) { IsUnknown = true });
                break;
            case UnknownKind.Chain:
                fold.Add(new RigChain(id, this, null) { IsUnknown = true });
                break;
        }
    }

    private static NodeKind KindOf(UnknownKind kind) => kind switch
    {
        UnknownKind.Group => NodeKind.Group,
        UnknownKind.Control => NodeKind.Control,
        UnknownKind.Joint => NodeKind.Joint,
        UnknownKind.CopyJoint => NodeKind.CopyJoint,
        _ => NodeKind.Any,
    };
}

/// <summary>Unknown code was handed an element and may have said anything about it.</summary>
internal sealed class Touched(PlaceId place, int element) : RigEvent(place)
{
    public override void Apply(ModelFold fold, int id) => fold.Find<RigElement>(element)?.Forget();
}

/// <summary>A stretch of code that couldn't be read: there may be more to the rig than the model shows.</summary>
internal sealed class Gap(PlaceId place, string reason) : RigEvent(place)
{
    public override void Apply(ModelFold fold, int id) => fold.Model.Gaps.Add(new RigGap(Place, reason));
}

/// <summary>A finding that the team means to keep.</summary>
internal sealed class Accepted(PlaceId place, int element, Text rule, Text because) : RigEvent(place)
{
    public override void Apply(ModelFold fold, int id) =>
        fold.Model.Acceptances.Add(new RigAcceptance(fold.Find<RigElement>(element), rule, because, Place));
}
