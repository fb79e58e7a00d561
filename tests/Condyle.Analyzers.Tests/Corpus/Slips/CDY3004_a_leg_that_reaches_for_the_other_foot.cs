namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var left = rig.Control("foot_left").Under(root).PlacedAt(joints.Ankle.Left);
        var right = rig.Control("foot_right").Under(root).PlacedAt(joints.Ankle.Right);
        foreach (var side in Side.Both)
        {
            var leg = rig.Chain(joints.Hip[side], joints.Ankle[side]);
            var ik = leg.Copy("ik").Under(root);
            var foot = side == Side.Left ? left : left;
            rig.TwoBone(ik).Reach(foot).Face(rig.Control($"knee_pole_{side}").Under(root).PlacedAt(ik.PolePoint(0.4f))); // finds CDY3004
            rig.Blend(leg).From(ik, 1);
        }

        rig.Control("nail").Under(right);
    }
}
