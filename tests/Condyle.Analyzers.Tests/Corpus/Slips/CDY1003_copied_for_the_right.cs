namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var left = rig.Control("hand_left").PlacedAt(joints.Wrist.Left);
        var right = rig.Control("grip_left").PlacedAt(joints.Wrist.Right); // finds CDY1003
        rig.Drive(joints.Wrist.Left).ByChannels(left);
        rig.Drive(joints.Wrist.Right).ByChannels(right);
    }
}
