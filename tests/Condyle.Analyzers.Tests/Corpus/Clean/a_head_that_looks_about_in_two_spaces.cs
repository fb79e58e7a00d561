namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var world = rig.Control("world");
        var hips = rig.Control("hips").Under(world).PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        var waist = Turn(rig, joints.Waist, hips);
        var chest = Turn(rig, joints.Chest, waist);
        foreach (var side in Side.Both)
            Turn(rig, joints.Shoulder[side], Turn(rig, joints.Collar[side], chest));

        // The way of the body has the head, or the quay has it.
        var quay = rig.Control("quay");
        var look = rig.Control("look").PlacedAt(joints.Head);
        rig.Space(look).In("body", chest).In("quay", quay);
        rig.Drive(joints.Head).ByChannels(look);

        var box = rig.Skeleton("crate").Root("crate", at: new Vector3(2, 0, 0));
        rig.Drive(box).ByChannels(rig.Control("crate_move").PlacedAt(box));
    }

    private static Control Turn(RigDraft rig, Joint joint, Control above)
    {
        var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }
}
