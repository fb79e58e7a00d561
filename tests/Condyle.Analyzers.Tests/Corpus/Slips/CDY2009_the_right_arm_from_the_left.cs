namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var left = rig.Chain(joints.Shoulder.Left, joints.Wrist.Left);
        var right = rig.Chain(joints.Shoulder.Right, joints.Wrist.Right);
        var leftFk = left.Copy("fk").Under(rig.Group("arm_left_group").Under(root));
        var rightFk = right.Copy("fk").Under(rig.Group("arm_right_group").Under(root));
        Turn(rig, left, leftFk, root);
        Turn(rig, right, rightFk, root);
        rig.Blend(left).From(leftFk, 1f);
        Take(rig, right, leftFk);
    }

    private static void Turn(RigDraft rig, Chain bones, Copy fk, Control root)
    {
        foreach (var joint in bones)
            rig.Drive(fk.Of(joint)).ByChannels(rig.Control($"turn_{joint}").Under(root).PlacedAt(joint));
    }

    private static void Take(RigDraft rig, Chain bones, Copy copy) => rig.Blend(bones).From(copy, 1f); // finds CDY2009
}
