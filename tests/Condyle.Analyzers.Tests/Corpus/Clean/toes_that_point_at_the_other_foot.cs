namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var feet = Side.Both.ToDictionary(side => side, side => rig.Control($"foot_{side}").Under(root).PlacedAt(joints.Ankle[side]));
        foreach (var side in Side.Both)
        {
            rig.Drive(joints.Ankle[side]).ByChannels(feet[side]);
            rig.Aim(joints.Toes[side]).At(feet[side.Opposite]);
        }
    }
}
