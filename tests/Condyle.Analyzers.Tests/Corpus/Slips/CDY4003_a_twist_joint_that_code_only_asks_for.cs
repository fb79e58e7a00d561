namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var shoulder = rig.Skeleton("derrick").Root("shoulder", at: new Vector3(0, 3, 0));
        var twist = shoulder.Child("shoulder_twist", JointRole.Twist, at: new Vector3(0, 0.02f, 0.5f));
        var elbow = twist.Child("elbow", at: new Vector3(0, 0.08f, 0.5f));
        var arm = rig.Chain(shoulder, elbow.Child("hook", at: new Vector3(0, -0.1f, 1))); // finds CDY4003
        var ik = arm.Copy("ik");
        var bones = new Dictionary<string, CopyJoint> { ["roll"] = ik.Of(twist), ["bend"] = ik.Of(elbow) };
        rig.ManyBone(ik).Reach(rig.Control(bones.Count > 1 ? "hook_goal" : "goal").PlacedAt(arm.Tip));
        rig.Blend(arm).From(ik, 1);
    }
}
