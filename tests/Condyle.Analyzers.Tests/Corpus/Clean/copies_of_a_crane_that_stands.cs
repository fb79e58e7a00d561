namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        // Nothing carries the crane, so nothing has to carry its copy.
        var foot = rig.Skeleton("crane").Root("foot");
        var mast = foot.Child("mast", at: new Vector3(0, 8, 0));
        var elbow = mast.Child("elbow", at: new Vector3(0, 1, 4));
        var tip = elbow.Child("tip", at: new Vector3(0, -1, 4));
        var boom = rig.Chain(mast, tip);
        var ik = boom.Copy("ik").Under(rig.Group("crane_group"));
        rig.TwoBone(ik).Reach(rig.Control("hook").PlacedAt(tip)).Face(rig.Control("boom_pole").PlacedAt(ik.PolePoint(2)));
        rig.Blend(boom).From(ik, 1);
    }
}
