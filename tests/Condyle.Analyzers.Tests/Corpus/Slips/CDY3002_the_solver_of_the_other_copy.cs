namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var chest = rig.Control("turn_chest").PlacedAt(joints.Chest);
        rig.Drive(joints.Chest).ByChannels(chest);
        foreach (var side in Side.Both)
        {
            var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
            var copies = new[] { "ik", "fk" }.Select(tag => arm.Copy(tag).Under(rig.Group($"{tag}_arm_{side}_group").Under(chest).PlacedAt(arm.Root))).ToList();
            var hand = rig.Control($"hand_{side}").PlacedAt(arm.Tip);
            rig.TwoBone(copies[1]).Reach(hand);
            foreach (var joint in arm)
                rig.Drive(copies[1].Of(joint)).ByChannels(rig.Control($"turn_{joint}").Under(chest).PlacedAt(joint)); // finds CDY3002
            var amount = hand.Switch("fk");
            rig.Blend(arm).From(copies[0], amount.Inverse).From(copies[1], amount);
        }
    }
}
