using Condyle;

namespace Harbour._1;

/// <summary>A deckhand in oilskins. His arms are posed by the hand or by the joints, as a switch on the hand says.</summary>
[SkeletonFile("deckhand.gltf")]
public sealed class Deckhand : IRigDefinition
{
    /// <inheritdoc/>
    public void Define(RigDraft rig)
    {
        var joints = DeckhandSkeleton.In(rig);
        var systems = rig.Group("systems_group");

        var world = rig.Control("world").PlacedAt(joints.Root);
        rig.Drive(joints.Root).ByChannels(world);
        var chest = Turn(rig, joints.Chest, world);
        Turn(rig, joints.Head, chest);

        foreach (var side in Side.Both)
            Arm(rig, joints, side, chest, systems, world);
    }

    private static Control Turn(RigDraft rig, Joint joint, Control above)
    {
        var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint).Lock(Channels.Move);
        rig.Drive(joint).ByChannels(control);
        return control;
    }

    private static void Arm(RigDraft rig, DeckhandSkeleton joints, Side side, Control chest, Group systems, Control world)
    {
        var bones = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
        var arm = rig.Limb(bones, "arm", side, under: chest, systems, space: world, new LimbOptions { Goal = "hand", Pole = "elbow_pole" });
        arm.Goal.Shaped(ControlShape.Box, size: 0.12f).Tinted(Tint.Coral);
    }
}
