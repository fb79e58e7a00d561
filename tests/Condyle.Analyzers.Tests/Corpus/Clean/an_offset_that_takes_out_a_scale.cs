namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        // The post is delivered scaled: the group stands there without the scale, and the offset keeps it so.
        var post = rig.Skeleton("davit").Root("post", scaled: new Vector3(2, 2, 2));
        var deck = rig.Control("deck").PlacedAt(post);
        rig.Drive(post).ByChannels(deck);
        var parts = rig.Group("tackle_group").PlacedAt(post);
        rig.Drive(parts).ByMatrix(post).KeepingOffset();
        rig.Control("hook").Under(parts);
    }
}
