namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        rig.Drive(joints.Head).ByChannels(rig.Control("look around").PlacedAt(joints.Head)); // finds CDY1004
        rig.Drive(joints.Chest).ByChannels(rig.Control("chest.turn").PlacedAt(joints.Chest)); // finds CDY1004
        rig.Drive(joints.Pelvis).ByChannels(rig.Control("2nd_root").PlacedAt(joints.Pelvis)); // finds CDY1004
    }
}
