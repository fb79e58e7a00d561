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

        foreach (var joint in leg.Where(joint => !joint.Name.StartsWith("ankle", StringComparison.Ordinal)))
            rig.Drive(joint).ByChannels(fk.Of(joint)); // finds CDY2004
    }
}
