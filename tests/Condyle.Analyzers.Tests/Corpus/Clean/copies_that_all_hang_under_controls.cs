namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        // A small rig without groups: all of its copies ride on the control, and that is its way.
        foreach (var side in Side.Both)
        {
            Limb(rig, rig.Chain(joints.Shoulder[side], joints.Wrist[side]), root, $"hand_{side}", $"elbow_pole_{side}");
            Limb(rig, rig.Chain(joints.Hip[side], joints.Ankle[side]), root, $"foot_{side}", $"knee_pole_{side}");
        }
    }

    private static void Limb(RigDraft rig, Chain limb, Control root, string tip, string pole)
    {
        var ik = limb.Copy("ik").Under(root);
        rig.TwoBone(ik).Reach(rig.Control(tip).Under(root).PlacedAt(limb.Tip)).Face(rig.Control(pole).Under(root).PlacedAt(ik.PolePoint(0.4f)));
        rig.Blend(limb).From(ik, 1);
    }
}
