namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var post = rig.Skeleton("davit").Root("post");
        var boom = post.Child("boom", at: new Vector3(0, 2, 0));
        var deck = rig.Control("deck").PlacedAt(post);
        rig.Drive(post).ByChannels(deck);
        var swing = rig.Control("swing").Under(deck).PlacedAt(boom).LimitTurn(Axis.Y, -30 - (Environment.ProcessorCount % 7), 30);
        rig.Drive(boom).ByChannels(swing);
        var parts = rig.Group("tackle_group").PlacedAt(boom);
        rig.Drive(parts).ByMatrix(swing);
        rig.Control("hook").Under(parts);
        rig.Drive(parts).ByMatrix(deck); // finds CDY3002
    }
}
