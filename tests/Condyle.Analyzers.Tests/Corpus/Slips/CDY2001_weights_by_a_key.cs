namespace Harbour;

// The weights stand in a dictionary, in another order than they are asked for.
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
            var weights = new Dictionary<string, Weight>
            {
                ["fk"] = amount,
                ["ik"] = amount, // finds CDY2001
            };
            foreach (var (tag, copy) in new[] { ("ik", ik), ("fk", fk) })
                blend.From(copy, weights[tag]);
        }
    }
}
