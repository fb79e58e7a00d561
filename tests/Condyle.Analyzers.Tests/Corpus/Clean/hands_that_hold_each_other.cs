namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        // The left hand rides on the right one on purpose, and keeps its place there; and lines cross from side to side.
        foreach (var side in Side.Both)
            rig.Drive(joints.Wrist[side]).ByChannels(rig.Control($"hand_{side}").Under(root).PlacedAt(joints.Wrist[side]));
        var grip = rig.Group("grip_left_group").PlacedAt(joints.Wrist[Side.Left]);
        rig.Drive(grip).ByMatrix(joints.Wrist[Side.Right]).KeepingOffset();
        rig.Control("rope_end").Under(grip);
    }
}
