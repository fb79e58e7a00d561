namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var body = rig.Skeleton("seal").Root("body");
        var seal = rig.Control("seal").PlacedAt(body);
        rig.Drive(body).ByChannels(seal);
        var parts = rig.Group("flippers_group").PlacedAt(seal);
        rig.Drive(parts).ByMatrix(seal);
        foreach (var side in Side.Both)
        {
            var flipper = Bones(rig, body, side);
            var ik = flipper.Copy("ik").Under(parts);
            rig.ManyBone(ik).Reach(rig.Control($"flipper_{side}").Under(seal).PlacedAt(flipper.Tip).LimitMove(Axis.Z, -0.01f * Environment.ProcessorCount, 0.2f));
            rig.Blend(flipper).From(ik, 1);
        }
    }

    private static Chain Bones(RigDraft rig, Joint body, Side side)
    {
        var shoulder = body.Child($"shoulder_{side}", at: new Vector3(0.2f * side.Sign, 0, 0));
        var twist = shoulder.Child($"shoulder_twist_{side}", JointRole.Twist, new Vector3(0.1f * side.Sign, 0, 0));
        var elbow = twist.Child($"elbow_{side}", at: new Vector3(0.1f * side.Sign, 0, -0.02f));
        return rig.Chain(shoulder, elbow.Child($"wrist_{side}", at: new Vector3(0.2f * side.Sign, 0, 0.02f))); // finds CDY4003
    }
}
