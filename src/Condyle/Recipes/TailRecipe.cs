using Condyle.Model;

namespace Condyle.Recipes;

/// <summary>A tail or a wing: controls that turn it joint by joint, and one whose turn all joints share.</summary>
internal static class TailRecipe
{
    /// <summary>None where the joints aren't known.</summary>
    public static Tail? Build(RigDraft rig, Chain bones, RecipeNames names, Node under, TailOptions options, PlaceId place)
    {
        if (rig.IsOpen(bones.IdIn(rig)))
            return null;
        Given.APart(names.Part, "A tail", "tail");
        var bend = rig.Control(names.Of("bend"), place).Under(under, place).PlacedAt(bones.Root, place).Lock(Channels.Move, place);
        var turns = new List<Control>();

        // Each control rides the joint above, which the bend has turned already, so that the shares add up towards the tip.
        var above = under;
        foreach (var joint in bones)
        {
            var turn = rig.Turn(joint, above, place);
            rig.Drive(joint, place).ByChannels(turn, place);
            turns.Add(turn);
            above = joint;
        }

        rig.Falloff(bones, place).From(bend, place).Sharing(options.FirstShareFact, options.LastShareFact, 1f, place);
        return new Tail(turns, bend);
    }
}
