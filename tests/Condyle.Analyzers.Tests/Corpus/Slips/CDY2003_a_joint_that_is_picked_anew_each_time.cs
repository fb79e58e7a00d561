namespace Harbour;

public sealed class Slip : IRigDefinition
{
    private int taken;

    private Joint[] bones = [];

    private Joint Next => bones[taken++];

    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        bones = [joints.Shoulder.Left, joints.Elbow.Left, joints.Wrist.Left];
        var root = rig.Control("root");
        var arm = rig.Chain(joints.Shoulder.Left, joints.Wrist.Left);
        var fk = arm.Copy("fk").Under(rig.Group("arm_left_group").Under(root));
        Node above = root;
        foreach (var joint in arm)
        {
            var turn = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(turn);
            above = turn;
        }

        rig.Drive(Next).ByChannels(fk.Of(joints.Shoulder.Left));
        rig.Drive(Next).ByChannels(fk.Of(joints.Wrist.Left)); // finds CDY2003
        rig.Drive(joints.Wrist.Left).ByChannels(fk.Of(joints.Wrist.Left));
    }
}
