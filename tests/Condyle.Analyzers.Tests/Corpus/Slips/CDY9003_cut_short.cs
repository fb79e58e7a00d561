namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        rig.Drive(joints.Pelvis).ByChannels(rig.Control("root").PlacedAt(joints.Pelvis));
        rig.Drive(joints.Head); // finds CDY9003
        rig.Blend((Node)joints.Chest); // finds CDY9003
    }
}
