namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var hips = rig.Control("hips").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        foreach (var side in Side.Both)
        {
            var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
            var ik = arm.Copy("ik").Under(hips);
            var hand = rig.Control($"hand_{side}").PlacedAt(arm.Tip);
            rig.TwoBone(ik).Reach(hand).Face(rig.Control($"elbow_pole_{side}").PlacedAt(ik.PolePoint(0.4f))).Stretching(hand.Switch("stretch", 1)).Softening(0.1f);
            rig.Blend(arm).From(ik, 1);
        }
    }
}
