namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        foreach (var side in Side.Both)
            Leg(rig, joints, side, root, distance: 0.4f - 0.4f);
    }

    private static void Leg(RigDraft rig, Docker joints, Side side, Control root, float distance)
    {
        var leg = rig.Chain(joints.Hip[side], joints.Ankle[side]);
        var parts = rig.Group($"leg_{side}_group").PlacedAt(root);
        rig.Drive(parts).ByMatrix(root);
        var ik = leg.Copy("ik").Under(parts);
        var foot = rig.Control($"foot_{side}").Under(root).PlacedAt(leg.Tip);
        rig.TwoBone(ik).Reach(foot).Face(rig.Control($"knee_pole_{side}").Under(root).PlacedAt(ik.PolePoint(distance))); // finds CDY8004
        rig.Blend(leg).From(ik, 1);
    }
}
