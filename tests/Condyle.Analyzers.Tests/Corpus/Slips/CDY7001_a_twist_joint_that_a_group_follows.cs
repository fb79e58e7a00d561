namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var a = rig.Skeleton("crane").Root("shoulder", at: new Vector3(2, 1, 0));
        var tw = a.Child("upper_twist", JointRole.Twist, at: new Vector3(0.1f, 0, 0));
        var b = tw.Child("elbow", at: new Vector3(0.2f, 0, -0.03f));
        var c = b.Child("hook", at: new Vector3(0.2f, 0, 0.03f));
        var arm = rig.Chain(a, c);
        var ik = arm.Copy("ik").Under(root);
        rig.TwoBone(ik).Reach(rig.Control("hook_goal").Under(root).PlacedAt(c)); // finds CDY7001
        rig.Blend(arm).From(ik, 1);
        var g = rig.Group("along_group").Under(root).PlacedAt(tw);
        rig.Drive(g).ByMatrix(ik.Of(tw));
    }
}
