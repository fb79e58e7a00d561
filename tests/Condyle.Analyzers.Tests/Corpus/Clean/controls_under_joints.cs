namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        // Controls may ride on a joint, as fingers do on a hand; only copies would be taken for the skeleton's own.
        foreach (var side in Side.Both)
        {
            rig.Drive(joints.Ankle[side]).ByChannels(rig.Control($"foot_{side}").Under(root).PlacedAt(joints.Ankle[side]));
            rig.Drive(joints.Toes[side]).ByChannels(rig.Control($"toes_bend_{side}").Under(joints.Ankle[side]).PlacedAt(joints.Toes[side]));
        }
    }
}
