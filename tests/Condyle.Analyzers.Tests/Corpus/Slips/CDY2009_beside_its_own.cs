namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var amount = root.Switch("loose");
        var held = new Dictionary<Side, Copy>();
        foreach (var side in Side.Both)
        {
            var leg = rig.Chain(joints.Hip[side], joints.Ankle[side]);
            var parts = rig.Group($"leg_{side}_group").Under(root);
            held[side] = Turned(rig, leg, "held", parts);
            rig.Blend(leg).From(held[Side.Left], amount.Inverse).From(Turned(rig, leg, "loose", parts), amount); // finds CDY2009
        }
    }

    private static Copy Turned(RigDraft rig, Chain bones, string tag, Group parts)
    {
        var copy = bones.Copy(tag).Under(parts);
        Node above = parts;
        foreach (var joint in bones)
        {
            var turn = rig.Control($"{tag}_turn_{joint}").Under(above).PlacedAt(joint);
            rig.Drive(copy.Of(joint)).ByChannels(turn);
            above = turn;
        }

        return copy;
    }
}
