namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var hips = rig.Control("hips").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        var legs = rig.Group("legs_group");
        rig.Drive(legs).ByMatrix(hips); // finds CDY8001
        foreach (var side in Side.Both)
        {
            var leg = rig.Chain(joints.Hip[side], joints.Ankle[side]);
            var ik = leg.Copy("ik").Under(legs);
            rig.TwoBone(ik).Reach(rig.Control($"foot_{side}").PlacedAt(leg.Tip)).Face(rig.Control($"knee_pole_{side}").PlacedAt(ik.PolePoint(0.4f)));
            rig.Blend(leg).From(ik, 1);
        }
    }
}
