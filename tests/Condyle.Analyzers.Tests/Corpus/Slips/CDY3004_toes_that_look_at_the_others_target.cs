namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var left = rig.Control("look_left").Under(root).PlacedAt(rig.Spot(joints.Toes.Left, new Vector3(0, 0, 0.2f)));
        var right = rig.Control("look_right").Under(root).PlacedAt(rig.Spot(joints.Toes.Right, new Vector3(0, 0, 0.2f)));
        rig.Aim(joints.Toes.Left).At(right); // finds CDY3004
        rig.Aim(joints.Toes.Right).At(right);
        rig.Group("lamp_group").Under(left);
    }
}
