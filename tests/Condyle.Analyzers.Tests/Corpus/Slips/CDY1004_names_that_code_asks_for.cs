namespace Harbour;

// What else is built goes by names: of a control, of a part of one limb among others, and of a switch.
public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var systems = rig.Group("systems_group");
        var world = rig.Control("world").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(world);
        rig.Limb(rig.Chain(joints.Hip.Left, joints.Ankle.Left), "long leg", Side.Left, world, systems, world, new LimbOptions { HasLabels = false }); // finds CDY1004
        var arm = rig.Limb(rig.Chain(joints.Shoulder.Left, joints.Wrist.Left), "long arm", Side.Left, world, systems, world, new LimbOptions { HasLabels = false }); // finds CDY1004
        if (arm.Goal.Name.StartsWith("long arm"))
            rig.Control("hook").Under(world);
        var look = rig.Control("look at").Under(world).PlacedAt(joints.Head); // finds CDY1004
        rig.Drive(joints.Head).ByChannels(look);
        switch (look.Name)
        {
            case "look at":
                rig.Control("lamp").Under(world);
                break;
        }
    }
}
