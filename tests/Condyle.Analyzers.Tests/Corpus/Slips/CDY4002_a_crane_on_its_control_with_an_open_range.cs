namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var hull = rig.Skeleton("launch").Root("hull");
        var boat = rig.Control("boat").PlacedAt(hull).LimitMove(Axis.Y, 0, Environment.ProcessorCount);
        rig.Drive(hull).ByChannels(boat);
        var parts = rig.Group("bow_group").PlacedAt(boat);
        rig.Drive(parts).ByMatrix(boat);
        foreach (var (end, at, above) in new (string, float, Node)[] { ("bow", 2, parts), ("stern", -2, boat) })
        {
            var foot = hull.Child($"{end}_foot", at: new Vector3(0, 1, at));
            var elbow = foot.Child($"{end}_elbow", at: new Vector3(0, 1, 0.1f));
            var crane = rig.Chain(foot, elbow.Child($"{end}_tip", at: new Vector3(0, 1, -0.1f)));
            var ik = crane.Copy("ik").Under(above); // finds CDY4002
            rig.TwoBone(ik).Reach(rig.Control($"{end}_hook").Under(boat).PlacedAt(crane.Tip)).Face(rig.Control($"{end}_pole").Under(boat).PlacedAt(ik.PolePoint(0.5f)));
            rig.Blend(crane).From(ik, 1);
        }
    }
}
