namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        rig.Drive(joints.Head).ByChannels(rig.Control("look_group").PlacedAt(joints.Head)); // finds CDY1005
    }
}
