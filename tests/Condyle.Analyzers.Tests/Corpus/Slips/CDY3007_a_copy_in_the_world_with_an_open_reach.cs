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
            var ik = arm.Copy("ik"); // finds CDY3007
            var hand = rig.Control($"hand_{side}").Under(root).PlacedAt(arm.Tip).LimitMove(Axis.Y, -0.1f * Environment.ProcessorCount, 0.4f);
            rig.TwoBone(ik).Reach(hand).Face(rig.Control($"elbow_pole_{side}").Under(root).PlacedAt(ik.PolePoint(0.4f)));
            rig.Blend(arm).From(ik, 1);
        }
    }
}
