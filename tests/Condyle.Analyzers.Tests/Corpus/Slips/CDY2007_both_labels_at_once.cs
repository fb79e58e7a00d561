namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root");
        var arm = rig.Chain(joints.Shoulder.Left, joints.Wrist.Left);
        var parts = rig.Group("arm_left_group");
        rig.Drive(parts).ByMatrix(root);
        var (ik, fk) = (arm.Copy("ik").Under(parts), arm.Copy("fk").Under(parts));
        var hand = rig.Control("hand_left").Under(root).PlacedAt(arm.Tip);
        rig.TwoBone(ik).Reach(hand);
        foreach (var joint in arm)
            rig.Drive(fk.Of(joint)).ByChannels(rig.Control($"turn_{joint}").Under(root).PlacedAt(joint));
        var amount = hand.Switch("fk");
        rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount);
        rig.Label("arm_shows_ik", "IK").ShownBy(amount); // finds CDY2007
        rig.Label("arm_shows_fk", "FK").ShownBy(amount);
    }
}
