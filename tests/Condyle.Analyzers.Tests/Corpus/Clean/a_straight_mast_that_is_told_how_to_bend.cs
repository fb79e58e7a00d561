namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var post = rig.Skeleton("mast").Root("post");
        Chain jib = rig.Chain(post, post.Child("jib", at: new Vector3(0, 2, 0)).Child("top", at: new Vector3(0, 2, 0)));
        var ik = jib.Bending(Vector3.UnitZ).Copy("ik");
        rig.TwoBone(ik).Reach(rig.Control("move_top").PlacedAt(jib.Tip));
        var stay = jib.Copy("stay");
        rig.ManyBone(stay).Reach(rig.Control("stay").PlacedAt(jib.Tip)).Face(rig.Control("stay_pole").PlacedAt(stay.PolePoint(1)));
        rig.Blend(jib).From(ik, 0.5f).From(stay, 0.5f);
    }
}
