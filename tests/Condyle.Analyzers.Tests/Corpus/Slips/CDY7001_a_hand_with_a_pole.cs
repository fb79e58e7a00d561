namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var hand = rig.Chain(joints.Elbow.Left, joints.Wrist.Left);
        var ik = hand.Copy("ik");
        rig.TwoBone(ik).Reach(rig.Control("reach").PlacedAt(hand.Tip)).Face(rig.Control("face").PlacedAt(ik.PolePoint(0.2f))); // finds CDY7001
        rig.Blend(hand).From(ik, 1);
    }
}
