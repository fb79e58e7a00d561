using System.Numerics;
using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Recipes;

/// <summary>Two eyes that look at a control each, both of them under one.</summary>
internal static class EyesRecipe
{
    public static Eyes Build(RigDraft rig, Joint left, Joint right, Joint head, Group systems, Node space, EyesOptions options, Conventions conventions, PlaceId place)
    {
        Given.Above(options.LookDistanceFact, "How far eyes look");
        var names = RecipeNames.Unsided(options.NameFact, conventions);
        var parts = rig.Group(names.Group, place).Under(systems, place).PlacedAt(head, place);
        rig.Drive(parts, place).ByMatrix(head, place);
        var up = rig.Group(names.GroupOf("up"), place).Under(parts, place).PlacedAt(rig.Spot(head, Vector3.UnitY, place), place);
        var look = rig.Control(names.Part, place).Under(space, place).PlacedAt(rig.Spot(head, FactSums.InFront(options.LookDistanceFact, options.HeightFact), place), place);
        var targets = new List<Control>();
        foreach (var eye in new[] { left, right })
        {
            var target = rig.Control("look_" + rig.NameOf(eye.IdIn(rig)), place).Under(look, place).PlacedAt(rig.Spot(eye, FactSums.InFront(options.LookDistanceFact, 0f), place), place).Lock(Channels.Turn, place);
            rig.Aim(eye, place).At(target, place).Up(up, place);
            targets.Add(target);
        }

        return new Eyes(look, targets[0], targets[1]);
    }
}
