namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        foreach (var side in Side.Both)
        {
            var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
            var (ik, fk) = (arm.Copy("ik"), arm.Copy("fk"));
            var hand = rig.Control($"hand_{side}").PlacedAt(arm.Tip);
            var amount = hand.Switch("fk");
            rig.TwoBone(ik).Reach(hand);
            foreach (var joint in arm)
                rig.Drive(fk.Of(joint)).ByChannels(rig.Control($"turn_{joint}").PlacedAt(joint));
            rig.Blend(arm).From(ik, amount).From(fk, amount); // finds CDY2001
            rig.Label($"ik_label_{side}", "IK").ShownBy(amount.Inverse);
            rig.Label($"fk_label_{side}", "FK").ShownBy(amount);
        }
    }
}
