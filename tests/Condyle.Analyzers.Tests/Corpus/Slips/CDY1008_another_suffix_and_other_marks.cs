[assembly: RigConventions(TagPlace = "after", GroupSuffix = "_grp")]

namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var body = rig.Control("body").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(body);
        foreach (var side in Side.Both)
            Leg(rig, joints, side, body);
    }

    private static void Leg(RigDraft rig, Docker joints, Side side, Control body)
    {
        var leg = rig.Chain(joints.Hip[side], joints.Ankle[side]);
        var parts = rig.Group($"fk_leg_{side}_grp"); // finds CDY1008
        rig.Drive(parts).ByMatrix(body);
        var fk = leg.Copy("fk").Under(parts);
        var above = body;
        foreach (var joint in leg)
        {
            above = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
            rig.Drive(fk.Of(joint)).ByChannels(above);
        }

        foreach (var joint in leg)
            rig.Drive(joint).ByChannels(fk.Of(joint));
    }
}
