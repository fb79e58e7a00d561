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
            var reach = flipper.Copy("reach").Under(parts);
            var sweep = flipper.Copy("sweep").Under(parts);
            var tip = rig.Control($"flipper_{side}").Under(seal).PlacedAt(flipper.Tip);
            rig.ManyBone(reach).Reach(tip);
            rig.ManyBone(sweep).Reach(rig.Control($"sweep_{side}").Under(seal).PlacedAt(flipper.Tip));
            var swept = tip.Switch("sweep");
            rig.Blend(flipper).From(reach, swept.Inverse).From(sweep, swept);
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
