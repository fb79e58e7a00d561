namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var leg = rig.Chain(joints.Hip.Left, joints.Ankle.Left);
        var parts = rig.Group("leg_left_group").PlacedAt(root);
        rig.Drive(parts).ByMatrix(root);
        var fk = leg.Copy("fk").Under(parts);
        Node above = root;
        foreach (var joint in leg)
        {
            var turn = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(turn);
            above = turn;
        }

        var at = joints.Hip.Left;
        var hip = rig.Drive(at);
        at = joints.Knee.Left;
        hip.ByChannels(fk.Of(joints.Ankle.Left)); // finds CDY2003
        rig.Drive(at).ByChannels(fk.Of(at = joints.Ankle.Left)); // finds CDY2003
        rig.Drive(at).ByChannels(fk.Of(/* the one above */ joints.Knee.Left)); // finds CDY2003
    }
}
