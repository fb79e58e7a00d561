// Read only: what the computer is called only a run knows.
namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var table = rig.Group(Environment.MachineName + "_group");
        rig.Drive(table).ByMatrix(joints.Chest);
        rig.Drive(joints.Head).ByChannels(rig.Control("look").PlacedAt(joints.Head));
        rig.Drive(joints.Pelvis).ByChannels(rig.Control("look").PlacedAt(joints.Pelvis)); // finds CDY1002
    }
}
