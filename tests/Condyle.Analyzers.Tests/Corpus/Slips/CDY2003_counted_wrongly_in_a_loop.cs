namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root");
        var leg = rig.Chain(joints.Hip.Right, joints.Ankle.Right);
        var fk = leg.Copy("fk").Under(rig.Group("leg_right_group").Under(root));
        foreach (var joint in leg)
            rig.Drive(fk.Of(joint)).ByChannels(rig.Control($"turn_{joint}").Under(root).PlacedAt(joint));
        for (var i = 0; i < leg.Count; i++)
            rig.Drive(leg[i]).ByChannels(fk.Of(leg[Math.Max(i - 1, 0)])); // finds CDY2003
    }
}
