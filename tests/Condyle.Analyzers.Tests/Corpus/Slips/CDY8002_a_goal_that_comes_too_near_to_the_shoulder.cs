namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var arm = rig.Chain(joints.Shoulder[Side.Left], joints.Wrist[Side.Left]);
        var (ik, other) = (arm.Copy("ik"), arm.Copy("other"));
        var hand = rig.Control("hand_left").PlacedAt(arm.Tip);
        var carry = hand.Switch("carry");
        var behind = arm.Root.Child("behind", JointRole.Helper, at: new Vector3(-0.5f, 0.1f, 0));
        var goal = rig.Group("goal_group").PlacedAt(arm.Tip);
        rig.Blend(goal).From(hand, carry.Inverse).From(rig.Control("hand_behind").PlacedAt(behind), carry);
        rig.TwoBone(ik).Reach(goal);
        rig.TwoBone(other).Reach(goal);
        rig.Blend(arm).From(ik, carry.Inverse).From(other, carry); // finds CDY8002
    }
}
