namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root");
        var arm = rig.Chain(joints.Shoulder.Left, joints.Wrist.Left);
        var parts = rig.Group("arm_left_group");
        rig.Drive(parts).ByMatrix(root);
        var (ik, fk) = (arm.Copy("ik").Under(parts), arm.Copy("fk").Under(parts));
        rig.TwoBone(ik).Reach(rig.Control("hand_left").Under(root).PlacedAt(arm.Tip));
        Node above = root;
        foreach (var joint in arm)
        {
            var turn = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(turn);
            above = turn;
        }

        var amount = root.Switch("fk");
        rig.Blend((Node)joints.Shoulder.Left).From(ik.Of(joints.Shoulder.Left), amount.Inverse).From(fk.Of(joints.Shoulder.Left), amount);
        rig.Blend((Node)joints.Elbow.Left).From(ik.Of(joints.Shoulder.Left), amount.Inverse).From(fk.Of(joints.Elbow.Left), amount); // finds CDY2003
        rig.Blend((Node)joints.Wrist.Left).From(ik.Of(joints.Wrist.Left), amount.Inverse).From(fk.Of(joints.Wrist.Left), amount);
    }
}
