namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        rig.Drive(joints.Wrist.Left).ByChannels(rig.Control("hand_left_left_leftover").Under(root).PlacedAt(joints.Wrist.Left)); // finds CDY1009
        rig.Drive(joints.Wrist.Right).ByChannels(rig.Control("hand_right_leftover").Under(root).PlacedAt(joints.Wrist.Right));
    }
}
