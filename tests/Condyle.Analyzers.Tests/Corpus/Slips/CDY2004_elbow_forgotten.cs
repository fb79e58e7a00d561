namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
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

        rig.Drive(arm.Root).ByChannels(fk.Root);
        rig.Drive(arm.Tip).ByChannels(fk.Tip); // finds CDY2004
    }
}
