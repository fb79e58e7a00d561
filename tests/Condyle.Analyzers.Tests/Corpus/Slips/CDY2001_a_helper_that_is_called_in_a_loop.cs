namespace Harbour;

// One call stands for both sources: no inverse in it is right for each of them.
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
            foreach (var copy in new[] { ik, fk })
                Give(blend, copy, amount);
        }
    }

    private static void Give(ChainBlend blend, Copy copy, Weight weight) => blend.From(copy, weight); // finds CDY2001
}
