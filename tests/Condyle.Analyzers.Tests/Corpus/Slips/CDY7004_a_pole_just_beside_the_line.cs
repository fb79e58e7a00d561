namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var leg = rig.Chain(joints.Hip[Side.Left], joints.Ankle[Side.Left]);
        Solve(rig, leg, leg.Root.Child("marker", JointRole.Helper, at: new Vector3(0.001f, -0.5f, 0.001f)));
    }

    private static void Solve(RigDraft rig, Chain limb, Joint marker)
    {
        var ik = limb.Copy("ik");
        rig.ManyBone(ik).Reach(rig.Control("foot").PlacedAt(limb.Tip)).Face(rig.Control("pole").PlacedAt(marker)); // finds CDY7004
        rig.Blend(limb).From(ik, 1);
    }
}
