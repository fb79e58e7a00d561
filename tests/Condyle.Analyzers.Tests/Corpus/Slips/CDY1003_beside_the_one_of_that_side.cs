namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        foreach (var side in Side.Both)
            rig.Drive(joints.Collar[side]).ByChannels(rig.Control($"shrug_{side}").Under(root).PlacedAt(joints.Collar[side]));
        var parts = rig.Group("cap_right_group").Under(root).PlacedAt(joints.Head);
        rig.Control("cap_right").Under(parts);
        rig.Group("cap_left_group").Under(root).PlacedAt(joints.Collar.Right); // finds CDY1003
    }
}
