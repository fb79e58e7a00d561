namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var post = rig.Skeleton("mast").Root("post");
        Chain jib = rig.Chain(post, post.Child("jib", at: new Vector3(0, 2, 0)).Child("top", at: new Vector3(0, 2, 0)));
        Solve(rig, jib);
    }

    private static void Solve(RigDraft rig, Chain jib)
    {
        var ik = jib.Copy("ik");
        rig.TwoBone(ik).Reach(rig.Control("move_top").PlacedAt(jib.Tip)).Face(rig.Control("pole").PlacedAt(ik.PolePoint(1))); // finds CDY7003
        rig.Blend(jib).From(ik, 1);
    }
}
