namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        for (var turn = 0; turn < 3; turn++)
            rig.Drive(joints.Head).ByChannels(rig.Control("look").PlacedAt(joints.Head)); // finds CDY1002
    }
}
