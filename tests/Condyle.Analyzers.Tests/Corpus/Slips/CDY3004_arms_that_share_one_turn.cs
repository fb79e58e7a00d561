namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var left = rig.Control("sway_shoulder_left").Under(root).PlacedAt(joints.Shoulder.Left);
        var right = rig.Control("sway_shoulder_right").Under(root).PlacedAt(joints.Shoulder.Right);
        rig.Falloff(rig.Chain(joints.Shoulder.Left, joints.Wrist.Left)).From(right); // finds CDY3004
        rig.Falloff(rig.Chain(joints.Shoulder.Right, joints.Wrist.Right)).From(right);
        rig.Group("sleeve_left_group").Under(left);
    }
}
