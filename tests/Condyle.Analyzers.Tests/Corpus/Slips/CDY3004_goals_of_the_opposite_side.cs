namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var feet = Side.Both.ToDictionary(side => side, side => rig.Control($"foot_{side}").Under(root).PlacedAt(joints.Ankle[side]));
        foreach (var side in Side.Both)
        {
            var leg = rig.Chain(joints.Hip[side], joints.Ankle[side]);
            var ik = leg.Copy("ik").Under(root);
            rig.TwoBone(ik).Reach(feet[side.Opposite]).Face(rig.Control($"knee_pole_{side}").Under(root).PlacedAt(ik.PolePoint(0.4f))); // finds CDY3004
            rig.Blend(leg).From(ik, 1);
        }
    }
}
