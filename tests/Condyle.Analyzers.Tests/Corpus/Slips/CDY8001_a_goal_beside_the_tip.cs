namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        rig.Drive(joints.Pelvis).ByChannels(rig.Control("hips").PlacedAt(joints.Pelvis));
        var leg = rig.Chain(joints.Hip[Side.Left], joints.Ankle[Side.Left]);
        var ik = leg.Copy("ik");
        var goal = rig.Control("foot_left").PlacedAt(joints.Knee[Side.Left]);
        var sole = rig.Control("sole_left").PlacedAt(joints.Toes[Side.Left]);
        rig.TwoBone(ik).Reach(goal); // finds CDY8001
        rig.Blend(leg).From(ik, 1);
        rig.Drive(joints.Toes[Side.Left]).ByChannels(sole);
    }
}
