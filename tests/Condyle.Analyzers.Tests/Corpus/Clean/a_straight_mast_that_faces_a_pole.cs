namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var post = rig.Skeleton("mast").Root("post");
        var beside = post.Child("rail", JointRole.Helper, at: new Vector3(0, 1, 1));
        var jib = rig.Chain(post, post.Child("jib", at: new Vector3(0, 2, 0)).Child("top", at: new Vector3(0, 2, 0)));
        var ik = jib.Copy("ik");
        rig.TwoBone(ik).Reach(rig.Control("move_top").PlacedAt(jib.Tip)).Face(rig.Control("pole").PlacedAt(beside));
        rig.Blend(jib).From(ik, 1);
    }
}
