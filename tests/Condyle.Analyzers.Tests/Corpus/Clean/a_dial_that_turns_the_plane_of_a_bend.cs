namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var davit = rig.Skeleton("davit").Root("post");
        var knuckle = davit.Child("knuckle", at: new Vector3(0, 1.6f, -0.3f));
        var head = knuckle.Child("head", at: new Vector3(0, 1.2f, 0.5f));
        var deck = rig.Control("deck").PlacedAt(davit);
        var parts = rig.Group("davit_group").PlacedAt(deck);
        rig.Drive(parts).ByMatrix(deck);
        var arm = rig.Chain(davit, head);
        var ik = arm.Copy("ik").Under(parts);
        var fall = rig.Control("fall").Under(deck).PlacedAt(head);
        rig.TwoBone(ik).Reach(fall).TurningPlane(fall.Dial("swing", -90, 90, unit: DialUnit.Degrees));
        foreach (var joint in arm)
            rig.Drive(joint).ByChannels(ik.Of(joint));
    }
}
