namespace Harbour;

/// <summary>The label tells what to do, not what has the limb; it is shown while the hands have it.</summary>
public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        foreach (var side in Side.Both)
        {
            var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
            var parts = rig.Group($"arm_{side}_group").PlacedAt(joints.Collar[side]);
            rig.Drive(parts).ByMatrix(joints.Collar[side]);
            var (ik, fk) = (arm.Copy("ik").Under(parts), arm.Copy("fk").Under(parts));
            var hand = rig.Control($"hand_{side}").Under(root).PlacedAt(arm.Tip);
            rig.TwoBone(ik).Reach(hand);
            Node above = parts;
            foreach (var joint in arm)
            {
                var turn = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
                rig.Drive(fk.Of(joint)).ByChannels(turn);
                above = turn;
            }

            var amount = hand.Switch("fk");
            rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount);
            rig.Label($"pull_{side}", "pull the hand").ShownBy(amount.Inverse);
            rig.Label($"turn_{side}", "turn the joints").ShownBy(amount);
            rig.Label($"ik_{side}", "ik").ShownBy(amount.Inverse * 0.5f);
        }
    }
}
