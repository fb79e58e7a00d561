using Condyle.Model;

namespace Condyle.Recipes;

/// <summary>A tail or a wing: controls that turn it joint by joint, and one whose turn all joints share.</summary>
internal static class TailRecipe
{
    /// <summary>None where the joints aren't known.</summary>
    public static Tail? Build(RigDraft rig, Chain bones, RecipeNames names, Node under, TailOptions options, PlaceId place)
    {
        if (rig.IsOpen(bones.Id))
            return null;
        var bend = rig.Control(names.Of("bend"), place).Under(under, place).PlacedAt(bones.Root, place).Lock(Channels.Move, place);
        var turns = rig.TurnEach(bones, under, joint => joint, place);
        rig.Falloff(bones, place).From(bend, place).Sharing(options.FirstShareFact, options.LastShareFact, 1f, place);
        return new Tail(turns, bend);
    }
}
