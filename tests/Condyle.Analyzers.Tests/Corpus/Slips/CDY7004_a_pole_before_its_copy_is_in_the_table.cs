namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var iks = new Dictionary<Side, Copy>();
        foreach (var side in Side.Both)
        {
            var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
            var pole = rig.Control($"elbow_pole_{side}").Under(root).PlacedAt(arm.Tip);
            var hand = rig.Control($"hand_{side}").Under(root).PlacedAt(arm.Tip);
            iks[side] = arm.Copy("ik").Under(root);
            rig.TwoBone(iks[side]).Reach(hand).Face(pole); // finds CDY7004
            rig.Blend(arm).From(iks[side], 1);
        }
    }
}
