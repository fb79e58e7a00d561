namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        // Which of the two is said depends on what only a run knows; it is never both.
        var look = rig.Control("look").Under(root).PlacedAt(joints.Head);
        if (Environment.Is64BitProcess)
            rig.Drive(joints.Head).ByChannels(look);
        else
            rig.Drive(joints.Head).ByChannels(look).KeepingOffset().Accept("CDY3005", because: "An old machine rounds otherwise.");
    }
}
