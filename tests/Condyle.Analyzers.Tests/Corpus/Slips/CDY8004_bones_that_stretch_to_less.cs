namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var arms = new List<Chain>();
        foreach (var side in Side.Both)
            arms.Add(rig.Chain(joints.Shoulder[side], joints.Wrist[side]));
        for (var i = 0; i < arms.Count; i++)
        {
            var parts = rig.Group($"arm_{Side.Both[i]}_group").PlacedAt(root);
            rig.Drive(parts).ByMatrix(root);
            var ik = arms[i].Copy("ik").Under(parts);
            var hand = rig.Control($"hand_{Side.Both[i]}").Under(root).PlacedAt(arms[i].Tip);
            rig.TwoBone(ik).Reach(hand).Stretching(hand.Switch("stretch"), most: 0.5f + (i * 0.25f)); // finds CDY8004
            rig.Blend(arms[i]).From(ik, 1);
        }
    }
}
