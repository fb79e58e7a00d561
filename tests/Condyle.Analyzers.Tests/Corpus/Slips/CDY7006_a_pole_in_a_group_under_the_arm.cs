namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var arm = rig.Chain(joints.Shoulder[Side.Left], joints.Wrist[Side.Left]);
        var ik = arm.Copy("ik");
        var hold = rig.Group("hold_group").Under(arm[1]);
        rig.ManyBone(ik).Reach(rig.Control("hand").PlacedAt(arm.Tip)).Face(Pole(rig, hold, ik));
        rig.Blend(arm).From(ik, 1);
    }

    private static Control Pole(RigDraft rig, Group under, Copy ik) =>
        rig.Control("elbow_pole").Under(under).PlacedAt(ik.PolePoint(0.4f)); // finds CDY7006
}
