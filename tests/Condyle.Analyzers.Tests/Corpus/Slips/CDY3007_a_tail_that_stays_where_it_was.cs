namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var hull = rig.Skeleton("launch").Root("hull");
        var foot = hull.Child("crane_foot", at: new Vector3(0, 1, 0));
        var elbow = foot.Child("crane_elbow", at: new Vector3(0, 1, 0.1f));
        var tip = elbow.Child("crane_tip", at: new Vector3(0, 1, -0.1f));
        var boat = rig.Control("boat").PlacedAt(hull);
        rig.Drive(hull).ByChannels(boat);

        var crane = rig.Chain(foot, tip);
        var parts = rig.Group("crane_group").PlacedAt(foot); // finds CDY3007
        var ik = crane.Copy("ik").Under(parts);
        rig.TwoBone(ik).Reach(rig.Control("hook").Under(boat).PlacedAt(tip)).Face(rig.Control("crane_pole").Under(boat).PlacedAt(ik.PolePoint(0.5f)));
        rig.Blend(crane).From(ik, 1);
    }
}
