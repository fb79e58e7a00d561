namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        foreach (var side in Side.Both)
        {
            var foot = rig.Control($"foot_{side}").Under(root).PlacedAt(joints.Ankle[side]);
            rig.Drive(joints.Ankle[side]).ByChannels(foot);
            if (side == Side.Left)
                rig.Drive(joints.Toes[side]).ByChannels(foot).KeepingOffset(); // finds CDY3008
        }
    }
}
