namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        // The group follows a joint, and what hangs under it drives joints below: no loop.
        foreach (var side in Side.Both)
        {
            rig.Drive(joints.Ankle[side]).ByChannels(rig.Control($"foot_{side}").Under(root).PlacedAt(joints.Ankle[side]));
            var foot = rig.Group($"foot_{side}_group").PlacedAt(joints.Ankle[side]);
            rig.Drive(foot).ByMatrix(joints.Ankle[side]);
            rig.Drive(joints.Toes[side]).ByChannels(rig.Control($"toes_bend_{side}").Under(foot).PlacedAt(joints.Toes[side]));
        }
    }
}
