namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var (left, right) = (rig.Chain(joints.Shoulder[Side.Left], joints.Wrist[Side.Left]), rig.Chain(joints.Shoulder[Side.Right], joints.Wrist[Side.Right]));
        var (ikLeft, ikRight) = (left.Copy("ik"), right.Copy("ik"));
        rig.TwoBone(ikLeft).Reach(rig.Control("hand_left").PlacedAt(left.Tip));
        rig.TwoBone(ikRight).Reach(rig.Control("hand_right").Under(joints.Wrist[Side.Left]).PlacedAt(right.Tip));
        rig.Blend(left).From(ikLeft, 1);
        rig.Blend(right).From(ikRight, 1);
    }
}
