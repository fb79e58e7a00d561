namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("head_group").PlacedAt(joints.Head); // finds CDY1005
        var parts = rig.Group("head_group").PlacedAt(joints.Head); // finds CDY1006
        rig.Drive(parts).ByMatrix(root);
        rig.Drive(joints.Head).ByChannels(rig.Control("turn_head").Under(parts).PlacedAt(joints.Head));
    }
}
