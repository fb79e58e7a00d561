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
            var (ik, fk, amount) = Arm(rig, arm, hips, side);
            rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount);
        }
    }

    private static (Copy Ik, Copy Fk, Switch Fks) Arm(RigDraft rig, Chain arm, Control hips, Side side)
    {
        var (ik, fk) = (arm.Copy("ik").Under(hips), arm.Copy("fk").Under(hips));
        var hand = rig.Control($"hand_{side}").PlacedAt(arm.Tip);
        rig.TwoBone(ik).Reach(hand).Face(rig.Control($"elbow_pole_{side}").PlacedAt(ik.PolePoint(0.4f)));
        var above = hips;
        foreach (var joint in arm)
        {
            var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(control);
            above = control;
        }

        return (ik, fk, hand.Switch("fk"));
    }
}
