namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var a = rig.Skeleton("crane").Root("shoulder", at: new Vector3(2, 1, 0));
        var tw = a.Child("upper_twist", JointRole.Twist);
        var b = tw.Child("elbow", at: new Vector3(0.1f, 0, -0.015f));
        var c = b.Child("hook", at: new Vector3(0.2f, 0, 0.03f));
        var ik = rig.Chain(a, c).Copy("ik").Under(root);
        rig.ManyBone(ik).Reach(rig.Control("hook_goal").Under(root).PlacedAt(c)); // finds CDY7005
        rig.Drive(a).ByChannels(ik.Of(a));
        rig.Drive(tw).ByChannels(ik.Of(tw));
        rig.Drive(b).ByChannels(ik.Of(b));
        rig.Drive(c).ByChannels(ik.Of(c));
    }
}
