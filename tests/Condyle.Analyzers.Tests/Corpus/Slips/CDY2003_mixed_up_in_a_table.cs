namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var leg = rig.Chain(joints.Hip.Left, joints.Ankle.Left);
        var fk = leg.Copy("fk").Under(rig.Group("leg_left_group").Under(root));
        Node above = root;
        foreach (var joint in leg)
        {
            var turn = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(turn);
            above = turn;
        }

        var followers = new Dictionary<Joint, Joint> { [leg[0]] = leg[0], [leg[1]] = leg[2], [leg[2]] = leg[2] };
        foreach (var (joint, taken) in followers)
            rig.Drive(joint).ByChannels(fk.Of(taken)); // finds CDY2003
    }
}
