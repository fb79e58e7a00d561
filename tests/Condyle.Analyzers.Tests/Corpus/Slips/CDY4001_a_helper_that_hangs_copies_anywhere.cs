namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        foreach (var side in Side.Both)
            Leg(rig, rig.Chain(joints.Hip[side], joints.Ankle[side]), joints.Pelvis, root, side);
    }

    private static void Leg(RigDraft rig, Chain leg, Node above, Control root, Side side)
    {
        var ik = leg.Copy("ik")
            .Under(above); // finds CDY4001
        var foot = rig.Control($"foot_{side}").Under(root).PlacedAt(leg.Tip);
        rig.TwoBone(ik).Reach(foot).Face(rig.Control($"knee_pole_{side}").Under(root).PlacedAt(ik.PolePoint(0.4f)));
        rig.Blend(leg).From(ik, 1);
    }
}
