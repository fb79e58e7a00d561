using System.Numerics;
using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Recipes;

/// <summary>A foot that rolls: heel, tip and ball, each under the one that comes after it in the roll, and the ankle under the last.</summary>
internal static class FootRollRecipe
{
    public static FootRoll Build(RigDraft rig, Limb leg, Joint toes, Fact<Vector3> heelFromAnkle, Fact<Vector3> tipFromToes, Conventions conventions, FootRollOptions options, PlaceId place)
    {
        var names = new RecipeNames(options.NameFact, leg.Side, conventions);
        var heel = rig.Group(names.GroupOf("heel"), place).Under(leg.Goal, place).PlacedAt(rig.Spot(leg.Bones.Tip, heelFromAnkle, place), place);
        var tip = rig.Group(names.GroupOf("tip"), place).Under(heel, place).PlacedAt(rig.Spot(toes, tipFromToes, place), place);
        var ball = rig.Group(names.GroupOf("ball"), place).Under(tip, place).PlacedAt(rig.Spot(toes, Vector3.Zero, place), place);
        var ankle = rig.Group(names.GroupOf("ankle"), place).Under(ball, place).PlacedAt(leg.Bones.Tip, place);
        leg.Solver.Reach(ankle, place);

        var (least, most) = (options.HeelDegreesFact.Times(-1), options.BallDegreesFact.Plus(options.TipDegreesFact));
        var roll = leg.Goal.Dial(options.DialFact, least, most, 0f, DialUnit.Degrees, place);
        rig.Response(roll, place).Key(least, least, null, place).Key(0f, 0f, null, place).OntoTurn(heel, Axis.X, place);
        rig.Response(roll, place).Key(0f, 0f, null, place).Key(options.BallDegreesFact, options.BallDegreesFact, null, place).OntoTurn(ball, Axis.X, place);
        rig.Response(roll, place).Key(options.BallDegreesFact, 0f, null, place).Key(most, options.TipDegreesFact, null, place).OntoTurn(tip, Axis.X, place);

        // The toes take the turn alone, so that they stay on the foot where the leg can't reach.
        var flat = rig.Group(names.GroupOf("flat_toes"), place).Under(tip, place).PlacedAt(toes, place);
        var turned = rig.Group(names.GroupOf("turned_toes"), place).Under(leg.Turns[leg.Turns.Count - 1], place).PlacedAt(toes, place);
        var carried = rig.Group(names.GroupOf("toes"), place).Under(leg.Parts, place).PlacedAt(toes, place);
        rig.Blend(carried, place).From(flat, leg.Fk.Inverse, place).From(turned, leg.Fk, place);
        var turn = rig.Turn(toes, carried, place);
        rig.Drive(toes, place).ByChannels(turn, place).Writing(Channels.Turn, place);
        return new FootRoll(heel, tip, ball, ankle, roll, turn);
    }
}
