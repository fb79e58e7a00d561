using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Recipes;

/// <summary>A collar: a control behind a group that takes a share of the turn towards the arm's goal while IK has the arm.</summary>
internal static class CollarRecipe
{
    public static Collar Build(RigDraft rig, Limb arm, Joint collar, Node under, Conventions conventions, CollarOptions options, PlaceId place)
    {
        var names = new RecipeNames(options.NameFact, arm.Side, conventions);

        // It looks at the goal and not at the arm, which hangs under it. Without an up it takes the shortest way there, and no roll.
        var still = rig.Group(names.GroupOf("still"), place).Under(under, place).PlacedAt(collar, place);
        var aimed = rig.Group(names.GroupOf("aim"), place).Under(under, place).PlacedAt(collar, place);
        rig.Aim(aimed, place).At(arm.Goal, place);

        var carried = rig.Group(names.Group, place).Under(under, place).PlacedAt(collar, place);
        var turn = rig.Turn(collar, carried, place);
        var follows = turn.Switch(options.SwitchFact, options.FollowsFact, place).AlsoOn(arm.Goal, place);
        var amount = follows * arm.Fk.Inverse;
        rig.Blend(carried, place).From(still, amount.Inverse, place).From(aimed, amount, place);
        rig.Drive(collar, place).ByChannels(turn, place);
        arm.Root.Under(turn, place);
        return new Collar(turn, follows, aimed, carried);
    }
}
