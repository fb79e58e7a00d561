using Condyle.Model;

namespace Condyle.Recipes;

/// <summary>A spine: controls for the body and the hips, and above them one for each joint or a curve through a middle and a top.</summary>
internal static class SpineRecipe
{
    /// <summary>None where the spine's joints or its options aren't known.</summary>
    public static Spine? Build(RigDraft rig, Chain bones, RecipeNames names, Group systems, Node space, SpineOptions options, PlaceId place)
    {
        if (rig.IsOpen(bones.IdIn(rig)) || !options.CurvesFact.TryKnown(out var curves) || !options.StretchesFact.TryKnown(out var stretches))
            return null;
        Given.APart(names.Part, "A spine", "spine");
        _ = systems.IdIn(rig); // of this rig, whether the spine needs it or not
        if (stretches && !curves)
            throw new ArgumentException($"The spine '{names.Part}' is to stretch and doesn't curve, but a spine that is turned joint by joint keeps its length. Let it curve as well, by Curves = true, or leave Stretches out.", nameof(options));
        if (bones.Count < 2)
            throw new ArgumentException($"The spine '{names.Part}' has one joint only. Give it the chain from the pelvis to the chest.", nameof(bones));

        var body = rig.Control(options.BodyFact, place).Under(space, place).PlacedAt(bones.Root, place);
        return curves ? Curved(rig, bones, names, body, systems, options, stretches, place) : Turned(rig, bones, body, options, place);
    }

    private static Spine Turned(RigDraft rig, Chain bones, Control body, SpineOptions options, PlaceId place)
    {
        // Hips sway below a still chest, so they turn about the joint above the pelvis, which keeps its distance from there.
        var hips = rig.Control(options.HipsFact, place).Under(body, place).PlacedAt(bones[1], place).Lock(Channels.Move, place);
        rig.Drive(bones.Root, place).ByChannels(hips, place).KeepingOffset(place);
        return new Spine(body, hips, rig.TurnEach(bones.Skip(1), body, joint => joint, place));
    }

    private static Spine Curved(RigDraft rig, Chain bones, RecipeNames names, Control body, Group systems, SpineOptions options, bool stretches, PlaceId place)
    {
        var parts = rig.Group(names.Group, place).Under(systems, place).PlacedAt(body, place);
        rig.Drive(parts, place).ByMatrix(body, place);
        var hips = rig.Control(options.HipsFact, place).Under(body, place).PlacedAt(bones.Root, place);
        var middle = rig.Control(names.Of("middle"), place).Under(body, place).PlacedAt(bones[bones.Count / 2], place).Lock(Channels.Turn, place);
        var top = rig.Control(names.Of("top"), place).Under(body, place).PlacedAt(bones.Tip, place);

        var copy = bones.Copy("curve", place).Under(parts, place);
        var curve = rig.Curve(copy, place).Through(hips, place).Through(middle, place).Through(top, place);
        if (stretches)
            curve.Stretching(body.Switch("stretch", place), place);

        // A curve takes no more than the roll of its ends, and what hangs under their controls goes with all of their turn.
        rig.Drive(bones.Root, place).ByChannels(hips, place);
        foreach (var joint in bones.Skip(1).Take(bones.Count - 2))
            rig.Drive(joint, place).ByChannels(copy.Of(joint), place);
        rig.Drive(bones.Tip, place).ByChannels(copy.Of(bones.Tip), place).Writing(Channels.Move, place);
        rig.Drive(bones.Tip, place).ByChannels(top, place).Writing(Channels.Turn, place);
        return new Spine(body, hips, [middle, top]);
    }
}
