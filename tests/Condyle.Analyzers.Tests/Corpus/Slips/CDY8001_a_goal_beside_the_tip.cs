namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var hips = rig.Control("hips").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        var leg = rig.Chain(joints.Hip[Side.Left], joints.Ankle[Side.Left]);
        var ik = leg.Copy("ik").Under(hips);
        var goal = rig.Control("foot_left").PlacedAt(joints.Knee[Side.Left]);
        var sole = rig.Control("sole_left").PlacedAt(joints.Toes[Side.Left]);
        rig.TwoBone(ik).Reach(goal); // finds CDY8001
        rig.Blend(leg).From(ik, 1);
        rig.Drive(joints.Toes[Side.Left]).ByChannels(sole);
    }
}
