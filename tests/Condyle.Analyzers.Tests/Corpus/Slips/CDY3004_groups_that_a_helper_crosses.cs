namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var starts = Side.Both.ToDictionary(side => side, side => rig.Control($"arm_root_{side}").Under(root).PlacedAt(joints.Shoulder[side]));
        foreach (var side in Side.Both)
            Arm(rig, joints.Shoulder[side], starts[side.Opposite], side);
    }

    private static void Arm(RigDraft rig, Joint shoulder, Control start, Side side)
    {
        var parts = rig.Group($"arm_{side}_group").PlacedAt(shoulder);
        rig.Drive(parts).ByMatrix(start); // finds CDY3004
        rig.Control($"arm_{side}").Under(parts);
    }
}
