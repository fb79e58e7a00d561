namespace Harbour;

// The labels go by the same table: its weights are theirs, too.
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
            var blend = rig.Blend(arm);
            foreach (var (copy, tag, weight) in new[] { (ik, "left", amount), (fk, "right", amount) })
            {
                blend.From(copy, weight); // finds CDY2001
                rig.Group($"{tag}_{side}_group").Under(rig.Control($"{tag}_{weight}_{side}"));
            }
        }
    }
}
