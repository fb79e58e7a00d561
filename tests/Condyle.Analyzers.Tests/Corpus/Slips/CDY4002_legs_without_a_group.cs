namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var arms = rig.Group("arms_group").PlacedAt(root);
        rig.Drive(arms).ByMatrix(root);
        foreach (var side in Side.Both)
        {
            Limb(rig, rig.Chain(joints.Shoulder[side], joints.Wrist[side]), arms, root, $"hand_{side}", $"elbow_pole_{side}");
            Limb(rig, rig.Chain(joints.Hip[side], joints.Ankle[side]), root, root, $"foot_{side}", $"knee_pole_{side}");
        }
    }

    private static void Limb(RigDraft rig, Chain limb, Node above, Control root, string tip, string pole)
    {
        var ik = limb.Copy("ik").Under(above); // finds CDY4002
        rig.TwoBone(ik).Reach(rig.Control(tip).Under(root).PlacedAt(limb.Tip)).Face(rig.Control(pole).Under(root).PlacedAt(ik.PolePoint(0.4f)));
        rig.Blend(limb).From(ik, 1);
    }
}
