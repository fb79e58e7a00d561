namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var nod = rig.Control("turn").Under(root).PlacedAt(joints.Head);
        rig.Drive(joints.Head).ByChannels(nod);
        var bow = rig.Control("turn").Under(root).PlacedAt(joints.Waist); // finds CDY1002
        rig.Drive(joints.Head).ByChannels(root).KeepingOffset(); // finds CDY3002
        rig.Drive(joints.Waist).ByChannels(bow);
    }
}
