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
            var ik = Solved(rig, arm, root, side);
            if (side == Side.Right)
                rig.Blend(arm).From(ik, 1); // finds CDY3008
        }
    }

    private static Copy Solved(RigDraft rig, Chain arm, Control root, Side side)
    {
        var ik = arm.Copy("ik").Under(root);
        rig.TwoBone(ik).Reach(rig.Control($"hand_{side}").Under(root).PlacedAt(arm.Tip)).Face(rig.Control($"elbow_pole_{side}").Under(root).PlacedAt(ik.PolePoint(0.4f)));
        return ik;
    }
}
