namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var left = rig.Control("shrug_collar_left").Under(root).PlacedAt(joints.Collar[Side.Left]);
        var right = rig.Control("shrug_collar_right").Under(root).PlacedAt(joints.Collar[Side.Right]);
        rig.Drive(joints.Collar[Side.Left]).ByChannels(right); // finds CDY3004
        rig.Drive(joints.Collar[Side.Right]).ByChannels(right);
        rig.Group("collar_left_group").Under(left);
    }
}
