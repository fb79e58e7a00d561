namespace Condyle.Model;

internal sealed class TwoBoneBegun(PlaceId place, int copy) : RigEvent(place)
{
    public override void Apply(ModelFold fold, int id) => fold.Add(new RigTwoBone(id, this, fold.Find<RigCopy>(copy)));
}

internal sealed class GoalSet(PlaceId place, int solver, int goal) : RigEvent(place)
{
    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigTwoBone>(solver) is { } found)
            found.Goal = fold.IsCertain(this, found) ? fold.Find<RigNode>(goal) : Fact<RigNode?>.Open;
    }
}

internal sealed class PoleSet(PlaceId place, int solver, int pole) : RigEvent(place)
{
    public override void Apply(ModelFold fold, int id)
    {
        if (fold.Find<RigTwoBone>(solver) is { } found)
            found.Pole = fold.IsCertain(this, found) ? fold.Find<RigNode>(pole) : Fact<RigNode?>.Open;
    }
}
