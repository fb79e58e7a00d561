namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var left = rig.Chain(joints.Hip.Left, joints.Ankle.Left);
        var leftFk = left.Copy("fk").Under(rig.Group("leg_left_group").Under(root));
        foreach (var joint in left)
            rig.Drive(leftFk.Of(joint)).ByChannels(rig.Control($"turn_{joint}").Under(root).PlacedAt(joint));
        rig.Blend(left).From(leftFk, 1f);
        var right = rig.Chain(joints.Hip.Right, joints.Ankle.Right);
        var rightFk = right.Copy("fk").Under(rig.Group("leg_right_group").Under(root));
        foreach (var joint in right)
            rig.Drive(rightFk.Of(joint)).ByChannels(rig.Control($"turn_{joint}").Under(root).PlacedAt(joint));
        rig.Blend(right).From(leftFk, 1f); // finds CDY2009
    }
}
