using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Recipes;

/// <summary>A biped's spine, neck, head and eyes.</summary>
/// <param name="Spine">The spine.</param>
/// <param name="Carrier">What arms and neck hang under.</param>
/// <param name="Neck">The controls that turn the neck.</param>
/// <param name="Head">The head.</param>
/// <param name="HeadSpaces">What the head rides, where there are spaces.</param>
/// <param name="Eyes">The eyes, where there are any.</param>
internal sealed record BipedTorso(Spine Spine, Node Carrier, IReadOnlyList<Control> Neck, Head Head, HeadSpaces? HeadSpaces, Eyes? Eyes)
{
    /// <summary>None where it isn't known which joints there are, or what the spine is like.</summary>
    public static BipedTorso? Of(RigDraft rig, BipedJoints joints, BipedOptions options, Group systems, Node space, BipedLooks looks, HumanLimits? limits, BodySpaces? spaces, PlaceId place)
    {
        var bones = rig.Chain(joints.Pelvis, joints.Chest, place).Without(JointRole.Twist, place);
        if (!options.SpineFact.TryKnown(out var like) || rig.Spine(bones, "spine", systems, space, like, place) is not { } spine
            || !joints.NeckFact.TryKnown(out var first) || !joints.EyesFact.TryKnown(out var pair))
            return null;
        var curves = like?.CurvesFact.TryKnown(out var known) == true && known;
        Show(spine, bones, curves, looks, limits);

        // A chest that lies along a curve stays behind when the curve's top goes further than it reaches.
        Node carrier = curves ? joints.Chest : spine.Turns[spine.Turns.Count - 1];
        var neck = new List<Control>();
        if (first is { } lowest)
        {
            var chain = rig.Chain(lowest, joints.Head, place).Without(JointRole.Twist, place);
            if (rig.IsOpen(chain.IdIn(rig)))
                return null;
            neck = rig.TurnEach(chain.Take(chain.Count - 1), carrier, joint => joint, place);
            for (var i = 0; i < neck.Count; i++)
            {
                looks.Across(neck[i], chain[i], chain[i + 1], 0.16f, Tint.Sand, "head");
                limits?.Neck(neck[i], chain[i]);
            }
        }

        var head = rig.Head(joints.Head, neck.Count > 0 ? neck[neck.Count - 1] : carrier, space, options.HeadFact.TryKnown(out var headLike) ? headLike : HeadOptions.Open(rig), place);
        looks.Across(head.Turn, joints.Head, Vector3d.UnitY, 0.26f, Tint.Sand, "head");
        looks.Show(head.Look, ControlShape.Diamond, 0.12f, Tint.Sand, "head");
        limits?.Head(head.Turn, joints.Head);
        var eyes = pair is { } both ? rig.Eyes(both.Left, both.Right, joints.Head, systems, spaces is null ? head.Turn : space, options.EyesFact.TryKnown(out var eyesLike) ? eyesLike : EyesOptions.Open(rig), place) : null;
        if (eyes is not null)
        {
            looks.Show(eyes.Look, ControlShape.Diamond, 0.12f, Tint.White, "head");
            looks.Show(eyes.Left, ControlShape.Diamond, 0.04f, Tint.White, "head");
            looks.Show(eyes.Right, ControlShape.Diamond, 0.04f, Tint.White, "head");
        }

        var headSpaces = spaces is null ? null : rig.Spaces(head, spaces, null, place);
        if (spaces is not null && eyes is not null)
            rig.Spaces(eyes.Look, spaces, new SpacesOptions { First = BodySpace.Head }, place);
        return new(spine, carrier, neck, head, headSpaces, eyes);
    }

    private static void Show(Spine spine, Chain bones, bool curves, BipedLooks looks, HumanLimits? limits)
    {
        looks.Show(spine.Body, ControlShape.Box, 0.4f, Tint.Amber, "torso");
        looks.Across(spine.Hips, curves ? bones[0] : bones[1], Vector3d.UnitY, 0.44f, Tint.Amber, "torso");
        if (curves)
        {
            looks.Across(spine.Turns[0], bones[bones.Count / 2], Vector3d.UnitY, 0.3f, Tint.Amber, "torso");
            looks.Across(spine.Turns[1], bones.Tip, Vector3d.UnitY, 0.36f, Tint.Amber, "torso");
            return;
        }

        limits?.Hips(spine.Hips, bones[1]);
        for (var i = 0; i < spine.Turns.Count; i++)
        {
            looks.Across(spine.Turns[i], bones[i + 1], Vector3d.UnitY, 0.36f, Tint.Amber, "torso");
            limits?.Spine(spine.Turns[i], bones[i + 1]);
        }
    }
}
