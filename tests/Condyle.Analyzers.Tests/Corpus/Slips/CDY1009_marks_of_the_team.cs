[assembly: RigConventions(LeftMark = "_L", RightMark = "_R")]

namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var (left, right) = (joints.Wrist.Left, joints.Wrist.Right);
        rig.Drive(left).ByChannels(rig.Control("hand_L_L").Under(root).PlacedAt(left)); // finds CDY1009
        rig.Drive(right).ByChannels(rig.Control("hand_R").Under(root).PlacedAt(right));
    }
}
