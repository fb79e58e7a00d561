namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var arm = rig.Chain(joints.Shoulder.Left, joints.Wrist.Left);
        var ik = arm.Copy("ik").Under(rig.Group("arm_left_group").Under(root).PlacedAt(arm.Root));
        var hand = rig.Control("hand_left").Under(root).PlacedAt(rig.Spot(joints.Wrist.Left, new Vector3(0.3f, 0, 0)));
        rig.TwoBone(ik).Reach(hand).Face(rig.Control("elbow_pole_left").Under(root).PlacedAt(arm.PolePoint(0.4f))); // finds CDY8003
        rig.Blend(arm).From(ik, 1);
    }
}
