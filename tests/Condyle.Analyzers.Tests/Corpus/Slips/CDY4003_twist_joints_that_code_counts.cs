namespace Harbour;

public sealed class Slip : IRigDefinition
{
    private static readonly string[] Words = ["lift", "roll", "bend", "grip"];

    public void Define(RigDraft rig)
    {
        var shoulder = rig.Skeleton("derrick").Root("shoulder", at: new Vector3(0, 3, 0));
        var twist = shoulder.Child("shoulder_twist", JointRole.Twist, at: new Vector3(0, 0.02f, 0.5f));
        var elbow = twist.Child("elbow", at: new Vector3(0, 0.08f, 0.5f));
        var arm = rig.Chain(shoulder, elbow.Child("hook", at: new Vector3(0, -0.1f, 1))); // finds CDY4003
        var ik = arm.Copy("ik");
        rig.ManyBone(ik).Reach(rig.Control($"{Words[3]}_hook").PlacedAt(arm[3]));
        rig.Blend(arm).From(ik, 1);
    }
}
