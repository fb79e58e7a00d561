namespace Harbour;

// The arms bend like wings. The line of the left one was copied for the right one, and a word of it was forgotten.
public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var systems = rig.Group("systems_group");
        var world = rig.Control("world").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(world);
        rig.Tail(rig.Chain(joints.Shoulder.Left, joints.Wrist.Left), "sail_left", world);
        rig.Tail(rig.Chain(joints.Shoulder.Right, joints.Wrist.Right), "wing_left", world); // finds CDY1003
    }
}
