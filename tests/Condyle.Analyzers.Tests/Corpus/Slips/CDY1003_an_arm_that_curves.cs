namespace Harbour;

// The arms curve like tentacles, whose groups say no side by their place.
public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var systems = rig.Group("systems_group");
        var world = rig.Control("world").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(world);
        var curved = new SpineOptions { Body = "left", Hips = "base_left", Curves = true };
        rig.Spine(rig.Chain(joints.Shoulder.Left, joints.Wrist.Left), "arm_left", systems, world, curved);
        rig.Spine(rig.Chain(joints.Shoulder.Right, joints.Wrist.Right), "feeler_left", systems, world, curved with { Body = "right", Hips = "base_right" }); // finds CDY1003, CDY6002
    }
}
