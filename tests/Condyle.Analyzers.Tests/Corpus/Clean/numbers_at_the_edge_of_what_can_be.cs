namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var sway = rig.Control("sway").Under(root).PlacedAt(joints.Waist);
        rig.Falloff(rig.Chain(joints.Waist, joints.Head)).From(sway).Sharing(-1, 1.5f);
        foreach (var side in Side.Both)
        {
            var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
            var parts = rig.Group($"arm_{side}_group").PlacedAt(root);
            rig.Drive(parts).ByMatrix(root);
            var ik = arm.Copy("ik").Under(parts);
            var hand = rig.Control($"hand_{side}").Under(root).PlacedAt(arm.Tip);
            var pole = rig.Control($"elbow_pole_{side}").Under(root).PlacedAt(ik.PolePoint(0.001f));
            rig.TwoBone(ik).Reach(hand).Face(pole).Softening(0).Stretching(hand.Switch("stretch"), most: 1);
            rig.Blend(arm).From(ik, 1);
        }
    }
}
