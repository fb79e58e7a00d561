namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        // One group follows the body, and the groups of the limbs hang under it.
        var systems = rig.Group("systems_group").PlacedAt(root);
        rig.Drive(systems).ByMatrix(root);
        foreach (var side in Side.Both)
            Arm(rig, joints, side, rig.Group($"arm_{side}_group").Under(systems), root);
    }

    private static void Arm(RigDraft rig, Docker joints, Side side, Group parts, Control root)
    {
        var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
        var ik = arm.Copy("ik").Under(parts);
        var hand = rig.Control($"hand_{side}").Under(root).PlacedAt(arm.Tip);
        rig.TwoBone(ik).Reach(hand).Face(rig.Control($"elbow_pole_{side}").Under(root).PlacedAt(ik.PolePoint(0.4f)));
        rig.Blend(arm).From(ik, 1);
    }
}
