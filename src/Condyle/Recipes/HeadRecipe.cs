using System.Numerics;
using Condyle.Model;

namespace Condyle.Recipes;

/// <summary>A head: a control that turns it, a group that is aimed at another control, and a switch between the two.</summary>
internal static class HeadRecipe
{
    public static Head Build(RigDraft rig, Joint head, RecipeNames names, Node under, Node space, HeadOptions options, PlaceId place)
    {
        Given.Above(options.LookDistanceFact, "How far a head looks");
        var turn = rig.Turn(head, under, place);
        var look = rig.Control(options.LookFact, place).Under(space, place).PlacedAt(rig.Spot(head, FactSums.InFront(options.LookDistanceFact, height: 0f), place), place).Lock(Channels.Turn, place);

        // Its up is a place, so that it doesn't matter how the joints' own axes lie.
        var aimed = rig.Group(names.GroupOf("aim"), place).Under(under, place).PlacedAt(head, place);
        var up = rig.Group(names.GroupOf("up"), place).Under(under, place).PlacedAt(rig.Spot(head, Vector3.UnitY, place), place);
        rig.Aim(aimed, place).At(look, place).Up(up, place);

        var aim = turn.Switch(options.SwitchFact, place).AlsoOn(look, place);
        rig.Blend(head, place).From(turn, aim.Inverse, place).From(aimed, aim, place);
        return new Head(head, under, turn, look, aim);
    }
}
