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
            var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
            var ik = arm.Copy("ik").Under(joints.Collar[side]); // finds CDY4001
            var hand = rig.Control($"hand_{side}").Under(root).PlacedAt(arm.Tip);
            rig.TwoBone(ik).Reach(hand).Face(rig.Control($"elbow_pole_{side}").Under(root).PlacedAt(ik.PolePoint(0.4f)));
            rig.Blend(arm).From(ik, 1);
        }
    }
}
