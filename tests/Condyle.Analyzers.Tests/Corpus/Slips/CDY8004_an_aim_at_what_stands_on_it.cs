namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var look = rig.Control("look").Under(root).PlacedAt(joints.Head);
        var gaze = rig.Group("gaze_group").Under(root).PlacedAt(joints.Head).Unlock(Channels.Turn);
        rig.Aim(gaze).At(look); // finds CDY8004
        rig.Drive(joints.Head).ByChannels(gaze);
    }
}
