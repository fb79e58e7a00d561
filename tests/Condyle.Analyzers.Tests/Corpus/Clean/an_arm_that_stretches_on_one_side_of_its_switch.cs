namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var hips = rig.Control("hips").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        foreach (var side in Side.Both)
        {
            var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
            var (ik, fk) = (arm.Copy("ik").Under(hips), arm.Copy("fk").Under(hips));
            var hand = rig.Control($"hand_{side}").PlacedAt(arm.Tip);
            rig.TwoBone(ik).Reach(hand).Stretching(hand.Switch("stretch"));
            foreach (var joint in arm)
                rig.Drive(fk.Of(joint)).ByChannels(rig.Control($"turn_{joint}").PlacedAt(joint).Lock(Channels.Turn));
            var amount = hand.Switch("fk");
            rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount);
        }
    }
}
