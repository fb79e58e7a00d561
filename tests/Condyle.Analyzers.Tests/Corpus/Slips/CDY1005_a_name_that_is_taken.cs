namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var look = rig.Control("look").Under(root).PlacedAt(joints.Chest);
        rig.Drive(joints.Chest).ByChannels(look);
        rig.Drive(joints.Head).ByChannels(rig.Control("look_group").Under(look).PlacedAt(joints.Head)); // finds CDY1005
    }
}
