namespace Condyle.Model;

internal sealed class TwoBoneBegun(PlaceId place, int copy) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfRig(nameof(RigDraft.TwoBone), new Saying.Element(copy));

    public override void Apply(ModelFold fold, int id) => fold.Add(new RigTwoBone(id, this, fold.Find<RigCopy>(copy)));
}

internal sealed class ManyBoneBegun(PlaceId place, int copy) : RigEvent(place)
{
    public int Copy => copy;

    public override Saying? SaidIn(EventLog log) => Saying.OfRig(nameof(RigDraft.ManyBone), new Saying.Element(copy));

    public override void Apply(ModelFold fold, int id) => fold.Add(new RigManyBone(id, this, fold.Find<RigCopy>(copy)));
}

internal sealed class GoalSet(PlaceId place, int solver, int goal) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(solver, nameof(TwoBone.Reach), new Saying.Element(goal));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigSolver>(solver) is not { } found)
            return;
        found.Goal = fold.IsCertain(this, found) ? fold.Find<RigNode>(goal) : Fact<RigNode?>.Open;
        found.Reached = (id, Place);
    }
}

internal sealed class PoleSet(PlaceId place, int solver, int pole) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(solver, nameof(TwoBone.Face), new Saying.Element(pole));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigSolver>(solver) is not { } found)
            return;
        found.Pole = fold.IsCertain(this, found) ? fold.Find<RigNode>(pole) : Fact<RigNode?>.Open;
        found.Faced = (id, Place);
    }
}

internal sealed class StretchSet(PlaceId place, int solver, Fact<WeightPolynomial> weight, Fact<float> most) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(solver, nameof(TwoBone.Stretching), weight, new Saying.Left("most", most, 1.5f));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigTwoBone>(solver) is { } found)
            found.Stretch = fold.IsCertain(this, found) && weight.TryKnown(out var known) ? new BoneStretch(known, most) : Fact<BoneStretch?>.Open;
    }
}

internal sealed class SoftnessSet(PlaceId place, int solver, Fact<float> metres) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(solver, nameof(TwoBone.Softening), metres);

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigTwoBone>(solver) is { } found)
            found.Softness = fold.IsCertain(this, found) ? metres : Fact<float>.Open;
    }
}

internal sealed class PlaneTurned(PlaceId place, int solver, int by) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(solver, nameof(TwoBone.TurningPlane), new Saying.Element(by));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigTwoBone>(solver) is { } found)
            found.PlaneTurn = fold.IsCertain(this, found) && fold.Find<RigElement>(by) is { IsUnknown: false } known ? known : Fact<RigElement?>.Open;
    }
}

internal sealed class ConeSet(PlaceId place, int solver, int joint, Fact<float> degrees) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(solver, nameof(ManyBone.Limiting), new Saying.Element(joint), degrees);

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigManyBone>(solver) is not { } found)
            return;
        found.Cones.Add(new JointCone(fold.Find<RigNode>(joint), degrees));
        found.ConesAreOpen |= !fold.IsCertain(this, found);
    }
}

internal sealed class SolverEndSet(PlaceId place, int solver, Fact<float> metres, Fact<int> rounds) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(solver, nameof(ManyBone.Within), metres, rounds);

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigManyBone>(solver) is { } found)
            found.End = fold.IsCertain(this, found) ? new SolverEnd(metres, rounds) : Fact<SolverEnd?>.Open;
    }
}

internal sealed class CurveBegun(PlaceId place, int copy) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfRig(nameof(RigDraft.Curve), new Saying.Element(copy));

    public override void Apply(ModelFold fold, int id) => fold.Add(new RigCurve(id, this, fold.Find<RigCopy>(copy)));
}

internal sealed class CurveLed(PlaceId place, int curve, int node) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(curve, nameof(Curve.Through), new Saying.Element(node));

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigCurve>(curve) is not { } found)
            return;
        found.Nodes.Add(fold.Find<RigNode>(node));
        found.Led.Add((id, Place));
        found.NodesAreOpen |= !fold.IsCertain(this, found);
    }
}

internal sealed class CurveStretchSet(PlaceId place, int curve, Fact<WeightPolynomial> weight) : RigEvent(place)
{
    public override Saying? SaidIn(EventLog log) => Saying.OfElement(curve, nameof(Curve.Stretching), weight);

    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigCurve>(curve) is { } found)
            found.Stretch = fold.IsCertain(this, found) && weight.TryKnown(out var known) ? known : Fact<WeightPolynomial?>.Open;
    }
}
