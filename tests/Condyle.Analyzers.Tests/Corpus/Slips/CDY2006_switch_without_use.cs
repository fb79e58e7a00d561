namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var look = rig.Control("look").PlacedAt(joints.Head);
        look.Switch("follow_chest"); // finds CDY2006
        rig.Drive(joints.Head).ByChannels(look);
    }
}
