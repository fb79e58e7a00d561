namespace Harbour;

// The team looks a limb up by the same text that names it, and puts the other one's name together.
public sealed class Slip : IRigDefinition
{
    private static readonly Dictionary<string, float> Reach = new() { ["left arm"] = 0.4f };

    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var systems = rig.Group("systems_group");
        var world = rig.Control("world").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(world);
        var name = "left arm";
        var arm = rig.Chain(joints.Shoulder.Left, joints.Wrist.Left);
        rig.Limb(arm, name, Side.Left, world, systems, world, new LimbOptions { PoleDistance = Reach[name], Goal = "hand", Pole = "elbow_pole" }); // finds CDY1004
        var other = "right";
        rig.Limb(rig.Chain(joints.Shoulder.Right, joints.Wrist.Right), other + " arm", Side.Right, world, systems, world, new LimbOptions { PoleDistance = 0.4f, Goal = "hand", Pole = "elbow_pole" }); // finds CDY1004
    }
}
