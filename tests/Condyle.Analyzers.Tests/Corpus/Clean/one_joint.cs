namespace Harbour;

/// <summary>A bollard: one joint and the control that moves it.</summary>
public sealed class Bollard : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var post = rig.Skeleton("bollard").Root("post");
        rig.Drive(post).ByChannels(rig.Control("move_post").PlacedAt(post));
    }
}
