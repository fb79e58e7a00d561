namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root");
        var leg = rig.Chain(joints.Hip.Right, joints.Ankle.Right);
        var fk = leg.Copy("fk").Under(rig.Group("leg_right_group").Under(root));
        Node above = root;
        foreach (var joint in leg)
        {
            var turn = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(turn);
            above = turn;
        }

        for (var i = 0; i < leg.Count; i++)
            rig.Drive(leg[i]).ByChannels(fk.Of(leg[Math.Max(i - 1, 0)])); // finds CDY2003
    }
}
