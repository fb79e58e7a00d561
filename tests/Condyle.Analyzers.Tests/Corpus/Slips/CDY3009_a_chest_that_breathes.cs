[assembly: RigConventions(JointScale = "forbidden")]

namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var chest = rig.Control("turn_chest").PlacedAt(joints.Chest);
        rig.Drive(joints.Chest).ByChannels(chest);
        var breath = chest.Dial("breath", 0, 1);
        rig.Response(breath).Key(0, 1).Key(1, 1.1f).OntoScale(joints.Chest, Axis.Z); // finds CDY3009
    }
}
