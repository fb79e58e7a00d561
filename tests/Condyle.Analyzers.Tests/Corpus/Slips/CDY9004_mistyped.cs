namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var parts = rig.Group("parts").Accept("CDY1101", because: "The loader wants it so."); // finds CDY1001, CDY9004
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(parts).ByMatrix(root);
        rig.Drive(joints.Pelvis).ByChannels(root);
    }
}
