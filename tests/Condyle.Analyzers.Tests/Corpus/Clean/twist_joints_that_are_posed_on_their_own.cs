namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var body = rig.Skeleton("seal").Root("body");
        var seal = rig.Control("seal").PlacedAt(body);
        rig.Drive(body).ByChannels(seal);
        var parts = rig.Group("flippers_group").PlacedAt(seal);
        rig.Drive(parts).ByMatrix(seal);
        // The copy takes the twist joint along because a control turns it there as well.
        foreach (var side in Side.Both)
        {
            var shoulder = body.Child($"shoulder_{side}", at: new Vector3(0.2f * side.Sign, 0, 0));
            var twist = shoulder.Child($"shoulder_twist_{side}", JointRole.Twist, new Vector3(0.1f * side.Sign, 0, 0));
            var flipper = rig.Chain(shoulder, twist.Child($"elbow_{side}", at: new Vector3(0.1f * side.Sign, 0, -0.02f)));
            var fk = flipper.Copy("fk").Under(parts);
            Node above = parts;
            foreach (var joint in flipper)
            {
                var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
                rig.Drive(fk.Of(joint)).ByChannels(control);
                above = control;
            }

            rig.Blend(flipper).From(fk, 1);
        }
    }
}
