namespace Condyle.Model;

internal sealed class AimBegun(PlaceId place, int node) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfRig(nameof(RigDraft.Aim), new Saying.Element(node));

    public override void Apply(ModelFold fold, int id) => fold.Add(new RigAim(id, this, fold.Find<RigNode>(node)));
}

internal sealed class AimTargetSet(PlaceId place, int aim, int target) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(aim, nameof(Aim.At), new Saying.Element(target));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigAim>(aim) is not { } found)
            return;
        found.Target = fold.IsCertain(this, found) ? fold.Find<RigNode>(target) : Fact<RigNode?>.Open;
        found.Pointed = (id, Place);
    }
}

internal sealed class AimAxisSet(PlaceId place, int aim, Fact<Axis> axis) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(aim, nameof(Aim.Along), axis);

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigAim>(aim) is { } found)
            found.Along = fold.IsCertain(this, found) && axis.TryKnown(out var known) ? known : Fact<Axis?>.Open;
    }
}

internal sealed class AimUpSet(PlaceId place, int aim, int node, Fact<Axis?> axis) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(aim, nameof(Aim.Up), new Saying.Element(node), new Saying.Left("axis", axis, null));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigAim>(aim) is not { } found)
            return;
        found.Up = fold.IsCertain(this, found) && fold.Find<RigNode>(node) is { } up ? new AimUp(up, axis) : Fact<AimUp?>.Open;
        found.Rolled = (id, Place);
    }
}

internal sealed class TwistBegun(PlaceId place, IReadOnlyList<int>? joints) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => joints is null ? null : Saying.OfRig(nameof(RigDraft.Twist), new Saying.Set(joints));

    public override void Apply(ModelFold fold, int id) => fold.Add(new RigTwist(id, this, joints?.Select(joint => fold.Find<RigNode>(joint)).ToArray()));
}

internal sealed class TwistEndsSet(PlaceId place, int twist, int start, int end) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(twist, nameof(Twist.Between), new Saying.Element(start), new Saying.Element(end));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigTwist>(twist) is not { } found)
            return;
        found.Ends = fold.IsCertain(this, found) && fold.Find<RigNode>(start) is { } from && fold.Find<RigNode>(end) is { } to ? new TwistEnds(from, to) : Fact<TwistEnds?>.Open;
        found.Spanned = (id, Place);
    }
}

internal sealed class TwistSharesSet(PlaceId place, int twist, Fact<float> first, Fact<float> last) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(twist, nameof(Twist.Sharing), first, last);

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigTwist>(twist) is { } found)
            found.Shares = fold.IsCertain(this, found) ? new TwistShares(first, last) : Fact<TwistShares?>.Open;
    }
}

internal sealed class FalloffBegun(PlaceId place, int target) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfRig(nameof(RigDraft.Falloff), new Saying.Element(target));

    public override void Apply(ModelFold fold, int id) => fold.Add(new RigFalloff(id, this, fold.Find<RigChain>(target), fold.Find<RigCopy>(target)));
}

internal sealed class FalloffSourced(PlaceId place, int falloff, int source) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(falloff, nameof(Falloff.From), new Saying.Element(source));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigFalloff>(falloff) is not { } found)
            return;
        found.Source = fold.IsCertain(this, found) ? fold.Find<RigNode>(source) : Fact<RigNode?>.Open;
        found.Sourced = (id, Place);
    }
}

internal sealed class FalloffSharesSet(PlaceId place, int falloff, Fact<float> first, Fact<float> last, Fact<float> total) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(falloff, nameof(Falloff.Sharing), first, last, new Saying.Left("total", total, 1f));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigFalloff>(falloff) is { } found)
            found.Shares = fold.IsCertain(this, found) ? new FalloffShares(first, last, total) : Fact<FalloffShares?>.Open;
    }
}

internal sealed class FalloffMoved(PlaceId place, int falloff) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(falloff, nameof(Falloff.WithMove));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigFalloff>(falloff) is { } found)
            found.Moves = fold.IsCertain(this, found) ? true : Fact<bool>.Open;
    }
}
