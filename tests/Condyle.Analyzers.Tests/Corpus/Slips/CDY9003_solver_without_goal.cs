namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var parts = rig.Group("leg_left_group").PlacedAt(root);
        rig.Drive(parts).ByMatrix(root);
        var leg = rig.Chain(joints.Hip.Left, joints.Ankle.Left);
        var ik = leg.Copy("ik").Under(parts);
        rig.TwoBone(ik).Face(rig.Control("knee_pole_left").Under(root).PlacedAt(ik.PolePoint(0.5f))); // finds CDY9003
        rig.Blend(leg).From(ik, 1f);
    }
}
