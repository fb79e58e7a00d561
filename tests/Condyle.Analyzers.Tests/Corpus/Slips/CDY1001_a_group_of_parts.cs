namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root");
        var parts = rig.Group("parts").PlacedAt(root); // finds CDY1001
        rig.Drive(parts).ByMatrix(root);
        rig.Drive(joints.Pelvis).ByChannels(rig.Control("hips").Under(parts).PlacedAt(joints.Pelvis));
    }
}
