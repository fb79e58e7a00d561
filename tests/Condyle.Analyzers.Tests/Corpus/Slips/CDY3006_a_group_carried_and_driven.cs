namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var pack = rig.Group("pack_group").PlacedAt(joints.Chest);
        rig.Drive(pack).ByMatrix(joints.Chest); // finds CDY3006
        rig.Drive(pack).ByChannels(root).KeepingOffset();
        rig.Control("strap").Under(pack);
    }
}
