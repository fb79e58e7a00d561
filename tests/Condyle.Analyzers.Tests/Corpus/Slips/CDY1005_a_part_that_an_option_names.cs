namespace Harbour;

// A spine calls a control as its options have it, with the word of a group.
public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var systems = rig.Group("systems_group");
        var world = rig.Control("world").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(world);
        rig.Spine(rig.Chain(joints.Waist, joints.Head), "spine", systems, world, new SpineOptions { Body = "torso_group" }); // finds CDY1005
    }
}
