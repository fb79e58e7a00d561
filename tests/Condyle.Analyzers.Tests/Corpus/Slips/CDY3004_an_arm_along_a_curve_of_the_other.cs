namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var hands = Side.Both.ToDictionary(side => side, side => rig.Control($"hand_{side}").Under(root).PlacedAt(joints.Wrist[side]));
        foreach (var side in Side.Both)
        {
            var arm = rig.Chain(joints.Collar[side], joints.Wrist[side]);
            var feeler = arm.Copy("feeler").Under(root);
            var start = rig.Control($"collar_start_{side}").Under(root).PlacedAt(joints.Collar[side]);
            rig.Curve(feeler).Through(start).Through(hands[side.Opposite]); // finds CDY3004
            rig.Blend(arm).From(feeler, 1);
        }
    }
}
