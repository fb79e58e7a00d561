namespace Harbour;

// A group is called after the text that an option has, and is right.
public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var systems = rig.Group("systems_group");
        var world = rig.Control("world").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(world);
        var torso = "torso_group";
        rig.Spine(rig.Chain(joints.Waist, joints.Head), "spine", systems, world, new SpineOptions { Body = torso }); // finds CDY1005
        rig.Drive(rig.Group("loads_of_" + torso)).ByMatrix(world);
    }
}
