namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        // The hips turn about the waist, so the pelvis keeps its distance; the head lands on its control. One helper serves both.
        Follow(rig, joints.Head, rig.Control("look").Under(root).PlacedAt(joints.Head));
        Follow(rig, joints.Chest, rig.Control("sway").Under(root).PlacedAt(joints.Waist));
    }

    private static void Follow(RigDraft rig, Joint joint, Control control) => rig.Drive(joint).ByChannels(control).KeepingOffset();
}
