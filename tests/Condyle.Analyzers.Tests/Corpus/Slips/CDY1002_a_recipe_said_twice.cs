namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var world = rig.Control("world").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(world);
        var systems = rig.Group("systems_group");
        var arm = rig.Chain(joints.Shoulder[Side.Left], joints.Wrist[Side.Left]);
        rig.Limb(arm, "arm", Side.Left, world, systems, world);
        rig.Limb(arm, "arm", Side.Left, world, systems, world); // finds CDY1002
    }
}
