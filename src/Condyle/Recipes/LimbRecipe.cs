using System.Numerics;
using Condyle.Model;

namespace Condyle.Recipes;

/// <summary>An arm or a leg: a copy that reaches for a goal, a copy that turns at its joints, and a switch that gives the limb from one to the other.</summary>
internal static class LimbRecipe
{
    /// <summary>None where the limb's joints or its options aren't known.</summary>
    public static Limb? Build(RigDraft rig, Chain bones, RecipeNames names, Side side, Node under, Group systems, Node space, LimbOptions options, PlaceId place)
    {
        if (rig.IsOpen(bones.IdIn(rig)) || Decided(options) is not var (startsInFk, stretches, turnsPlane, goalAlongWorld, hasLabels))
            return null;

        Given.APart(names.Part, "A limb", "arm");
        var root = rig.Control(names.Of("root"), place).Under(under, place).PlacedAt(bones.Root, place).Lock(Channels.Turn, place);
        var parts = rig.Group(names.Group, place).Under(systems, place).PlacedAt(root, place);
        rig.Drive(parts, place).ByMatrix(root, place);

        var ik = bones.Copy("ik", place).Under(parts, place);
        var goal = rig.Control(names.Sided(options.NameOfGoal(names.Part)), place).Under(space, place);
        goal = goalAlongWorld ? goal.PlacedAt(rig.Spot(bones.Tip, Vector3.Zero, place), place) : goal.PlacedAt(bones.Tip, place);
        var pole = rig.Control(names.Sided(options.NameOfPole(names.Part)), place).Under(space, place)
            .PlacedAt(ik.PolePoint(options.PoleDistanceFact, place), place).Lock(Channels.Turn, place);
        var solver = rig.TwoBone(ik, place).Reach(goal, place).Face(pole, place);
        if (options.IsSoft)
            solver.Softening(options.SoftnessFact, place);
        if (stretches)
            solver.Stretching(goal.Switch("stretch", place), options.MostStretchFact, place);
        if (turnsPlane)
            solver.TurningPlane(goal.Dial("bend", -90f, 90f, 0f, DialUnit.Degrees, place), place);

        var fk = bones.Copy("fk", place).Under(parts, place);
        var turns = rig.TurnEach(bones, root, joint => fk.Of(joint), place);

        var amount = goal.Switch(options.SwitchFact, startsInFk ? 1f : 0f, place).AlsoOn(root, place).AlsoOn(turns[turns.Count - 1], place);
        rig.Blend(bones, place).From(ik, amount.Inverse, place).From(fk, amount, place);
        if (hasLabels)
        {
            rig.Label("ik_" + names.Of("label"), "IK", place).Under(root, place).ShownBy(amount.Inverse, place);
            rig.Label("fk_" + names.Of("label"), "FK", place).Under(root, place).ShownBy(amount, place);
        }

        return new Limb(bones, side, root, goal, pole, turns, amount, ik, fk, solver, parts);
    }

    private static (bool StartsInFk, bool Stretches, bool TurnsPlane, bool GoalAlongWorld, bool HasLabels)? Decided(LimbOptions options) =>
        options.StartsInFkFact.TryKnown(out var startsInFk) && options.StretchesFact.TryKnown(out var stretches)
        && options.TurnsPlaneFact.TryKnown(out var turnsPlane)
        && options.GoalAlongWorldFact.TryKnown(out var goalAlongWorld) && options.HasLabelsFact.TryKnown(out var hasLabels)
            ? (startsInFk, stretches, turnsPlane, goalAlongWorld, hasLabels)
            : null;
}
