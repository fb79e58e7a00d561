namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        rig.Drive(joints.Pelvis).ByChannels(rig.Control("root").PlacedAt(joints.Pelvis).Accept("CDY1004", because: "The old loader wanted 'root.1'.")); // finds CDY9004
    }
}
