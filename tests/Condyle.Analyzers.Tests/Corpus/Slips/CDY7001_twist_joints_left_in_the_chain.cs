namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var shoulder = rig.Skeleton("derrick").Root("shoulder", at: new Vector3(0, 3, 0));
        var twist = shoulder.Child("shoulder_twist", JointRole.Twist, at: new Vector3(0, 0, 1));
        var elbow = twist.Child("elbow", at: new Vector3(0, 0.1f, 1));
        var arm = rig.Chain(shoulder, elbow.Child("hook", at: new Vector3(0, -0.1f, 2)));
        var ik = arm.Copy("ik");
        rig.TwoBone(ik).Reach(rig.Control("move_hook").PlacedAt(arm.Tip)); // finds CDY7001
        rig.Blend(arm).From(ik, 1);
    }
}
