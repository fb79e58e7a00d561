namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var hips = rig.Control("hips").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        foreach (var name in new[] { "belt_group", "pouch_group" })
            Holder(rig, name, Channels.Turn).Under(hips);
    }

    private static Group Holder(RigDraft rig, string name, Channels free) => rig.Group(name).Unlock(free); // finds CDY5003
}
