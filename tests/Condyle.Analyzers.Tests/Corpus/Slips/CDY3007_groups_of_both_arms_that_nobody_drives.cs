namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var systems = rig.Group("systems_group");
        foreach (var side in Side.Both)
            Arm(rig, joints, side, Parts(rig, "arm", side, systems), root);
    }

    private static Group Parts(RigDraft rig, string limb, Side side, Group systems) => rig.Group($"{limb}_{side}_group").Under(systems); // finds CDY3007

    private static void Arm(RigDraft rig, Docker joints, Side side, Group parts, Control root)
    {
        var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
        var ik = arm.Copy("ik").Under(parts);
        var hand = rig.Control($"hand_{side}").Under(root).PlacedAt(arm.Tip);
        rig.TwoBone(ik).Reach(hand).Face(rig.Control($"elbow_pole_{side}").Under(root).PlacedAt(ik.PolePoint(0.4f)));
        rig.Blend(arm).From(ik, 1);
    }
}
