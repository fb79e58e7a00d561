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
        Node above = root;
        foreach (var joint in arm)
        {
            var turn = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(turn);
            above = turn;
        }

        var amount = hand.Switch("fk");
        rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount);
        rig.Label("arm_shows_ik", "IK").ShownBy(amount); // finds CDY2007
        rig.Label("arm_shows_fk", "FK").ShownBy(amount);
    }
}
