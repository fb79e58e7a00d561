namespace Harbour;

/// <summary>A helper accepts what only one of its callers needs.</summary>
public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        foreach (var name in new[] { "cargo", "cargo_group" })
            rig.Drive(Holder(rig, name)).ByMatrix(root);
    }

    private static Group Holder(RigDraft rig, string name) => rig.Group(name).Accept("CDY1001", because: "The crane's controller finds its load by this name.");
}
