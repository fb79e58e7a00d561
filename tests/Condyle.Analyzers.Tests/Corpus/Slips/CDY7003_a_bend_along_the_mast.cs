namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var post = rig.Skeleton("mast").Root("post");
        Chain jib = rig.Chain(post, post.Child("jib", at: new Vector3(0, 2, 0)).Child("top", at: new Vector3(0, 2, 0)));
        var ik = jib.Bending(Vector3.UnitY).Copy("ik");
        rig.ManyBone(ik).Reach(rig.Control("move_top").PlacedAt(jib.Tip)); // finds CDY7003
        rig.Blend(jib).From(ik, 1);
    }
}
