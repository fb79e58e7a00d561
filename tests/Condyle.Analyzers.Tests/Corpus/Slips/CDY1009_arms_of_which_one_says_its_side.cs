namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var systems = rig.Group("systems_group");
        rig.Limb(rig.Chain(joints.Shoulder.Left, joints.Wrist.Left), "arm_left", Side.Left, root, systems, space: root, new LimbOptions { Goal = "hand", Pole = "elbow_pole" }); // finds CDY1009
        rig.Limb(rig.Chain(joints.Shoulder.Right, joints.Wrist.Right), "arm", Side.Right, root, systems, space: root, new LimbOptions { Goal = "hand", Pole = "elbow_pole" });
    }
}
