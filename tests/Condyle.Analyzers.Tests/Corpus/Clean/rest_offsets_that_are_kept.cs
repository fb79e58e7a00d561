namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var hips = rig.Control("hips").PlacedAt(joints.Waist);
        rig.Drive(joints.Pelvis).ByChannels(hips).KeepingOffset();
        rig.Drive(joints.Head).ByChannels(hips).KeepingOffset();
        var parts = rig.Group("parts_group").PlacedAt(joints.Chest);
        rig.Drive(parts).ByMatrix(hips).KeepingOffset();
        rig.Drive(joints.Chest).ByChannels(rig.Control("turn_chest").Under(parts).PlacedAt(joints.Chest));
    }
}
