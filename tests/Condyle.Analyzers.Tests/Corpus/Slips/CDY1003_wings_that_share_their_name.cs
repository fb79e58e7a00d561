namespace Harbour;

// Both wings are called by one text, which is right for one of them.
public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var systems = rig.Group("systems_group");
        var world = rig.Control("world").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(world);
        const string name = "wing_left";
        foreach (var side in Side.Both)
            rig.Tail(rig.Chain(joints.Shoulder[side], joints.Wrist[side]), name, world); // finds CDY1002, CDY1003
    }
}
