namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var chest = rig.Control("turn_chest").PlacedAt(joints.Chest);
        rig.Drive(joints.Chest).ByChannels(chest);
        Arm(rig, joints, Side.Left, chest);
        Arm(rig, joints, Side.Left, chest);
        Arm(rig, joints, Side.Right, chest);
    }

    private static void Arm(RigDraft rig, Docker joints, Side side, Control chest)
    {
        var arm = rig.Chain(joints.Shoulder[side], joints.Wrist[side]);
        var parts = rig.Group($"arm_{side}_group").Under(chest).PlacedAt(arm.Root);
        var ik = arm.Copy("ik").Under(parts);
        rig.TwoBone(ik).Reach(rig.Control($"hand_{side}").PlacedAt(arm.Tip)); // finds CDY1002
        rig.Blend(arm).From(ik, 1);
    }
}
