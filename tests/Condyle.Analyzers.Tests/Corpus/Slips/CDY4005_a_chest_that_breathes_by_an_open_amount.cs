namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var breathe = root.Dial("breathe", 0, 1, 0, DialUnit.Share);
        rig.Response(breathe).Key(0, 1).Key(1, 1.1f + (0.01f * Environment.ProcessorCount)).OntoScale(joints.Chest, Axis.Z); // finds CDY4005
        rig.Drive(joints.Head).ByChannels(rig.Control("look").Under(root).PlacedAt(joints.Head));
    }
}
