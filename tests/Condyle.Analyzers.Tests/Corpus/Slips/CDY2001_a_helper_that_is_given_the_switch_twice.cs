namespace Harbour;

// One call in a helper gives the arm both its sources: what is wrong is what the helper is given for one of them.
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
            Give(blend, ik, amount); // finds CDY2001
            Give(blend, fk, amount);
        }
    }

    private static void Give(ChainBlend blend, Copy copy, Weight weight) => blend.From(copy, weight);
}
