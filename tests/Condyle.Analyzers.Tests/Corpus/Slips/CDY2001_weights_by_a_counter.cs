namespace Harbour;

// The weights stand in a list of their own, which a counter goes through beside the copies.
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
            var copies = new[] { ik, fk };
            var weights = new List<Weight>
            {
                amount, // finds CDY2001
                amount,
            };
            for (var i = 0; i < copies.Length; i++)
                blend.From(copies[i], weights[i]);
        }
    }
}
