namespace Condyle.Model;

/// <summary>A finding that the team means to keep.</summary>
internal sealed class Accepted(PlaceId place, int element, Text rule, Text because) : RigEvent(place)
{
    public override void Apply(ModelFold fold, int id) =>
        fold.Model.Acceptances.Add(new RigAcceptance(id, fold.Find<RigElement>(element), rule, because, Place));
}
