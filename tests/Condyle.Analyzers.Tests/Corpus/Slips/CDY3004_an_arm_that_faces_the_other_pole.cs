namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var arms = Side.Both.ToDictionary(side => side, side => rig.Chain(joints.Shoulder[side], joints.Wrist[side]));
        var left = rig.Control("elbow_pole_left").Under(root).PlacedAt(arms[Side.Left].PolePoint(0.4f));
        var right = rig.Control("elbow_pole_right").Under(root).PlacedAt(arms[Side.Right].PolePoint(0.4f));
        var (ikLeft, ikRight) = (arms[Side.Left].Copy("ik").Under(root), arms[Side.Right].Copy("ik").Under(root));
        rig.TwoBone(ikLeft).Reach(rig.Control("hand_left").Under(root).PlacedAt(joints.Wrist.Left)).Face(left);
        rig.TwoBone(ikRight).Reach(rig.Control("hand_right").Under(root).PlacedAt(joints.Wrist.Right)).Face(left); // finds CDY3004
        rig.Blend(arms[Side.Left]).From(ikLeft, 1);
        rig.Blend(arms[Side.Right]).From(ikRight, 1);
        rig.Group("tassel_group").Under(right);
    }
}
