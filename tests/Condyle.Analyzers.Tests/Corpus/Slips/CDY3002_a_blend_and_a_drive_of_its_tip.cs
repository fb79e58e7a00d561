namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        foreach (var side in Side.Both)
        {
            var parts = rig.Group($"arm_{side}_group").PlacedAt(root);
            rig.Drive(parts).ByMatrix(root);
            var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
            var ik = arm.Copy("ik").Under(parts);
            var hand = rig.Control($"hand_{side}").Under(root).PlacedAt(arm.Tip);
            rig.TwoBone(ik).Reach(hand).Face(rig.Control($"elbow_pole_{side}").Under(root).PlacedAt(ik.PolePoint(0.4f)));
            rig.Blend(arm).From(ik, 1);
            rig.Drive(joints.Wrist[side]).ByChannels(hand); // finds CDY3002
        }
    }
}
