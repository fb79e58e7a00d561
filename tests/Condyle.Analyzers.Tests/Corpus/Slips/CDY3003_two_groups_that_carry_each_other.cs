namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var crate = rig.Group("crate_group").PlacedAt(joints.Chest);
        var sling = rig.Group("sling_group").PlacedAt(joints.Chest);
        rig.Drive(crate).ByMatrix(sling);
        rig.Drive(sling).ByMatrix(crate); // finds CDY3003
    }
}
