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
        foreach (var (tag, weight) in new[] { ("ik", (Weight)amount), ("fk", amount.Inverse) })
            rig.Label($"{tag}_label_left", tag.ToUpperInvariant()).ShownBy(weight); // finds CDY2007
    }
}
