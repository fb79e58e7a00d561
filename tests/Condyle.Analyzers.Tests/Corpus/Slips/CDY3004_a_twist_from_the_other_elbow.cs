namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var (left, right) = (joints.Elbow.Left, joints.Elbow.Right);
        rig.Drive(joints.Wrist.Left).ByChannels(rig.Control("hand_left").Under(root).PlacedAt(joints.Wrist.Left));
        rig.Drive(joints.Wrist.Right).ByChannels(rig.Control("hand_right").Under(root).PlacedAt(joints.Wrist.Right));
        rig.Twist(left.Child("elbow_twist_left", JointRole.Twist, at: new Vector3(0.13f, 0, 0))).Between(left, joints.Wrist.Left);
        rig.Twist(right.Child("elbow_twist_right", JointRole.Twist, at: new Vector3(-0.13f, 0, 0))).Between(left, joints.Wrist.Right); // finds CDY3004
    }
}
