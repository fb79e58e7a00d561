namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var hips = rig.Control("hips").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        var tools = rig.Group("tools group").PlacedAt(hips); // finds CDY1004
        rig.Drive(tools).ByMatrix(hips);
        rig.Drive(joints.Waist).ByChannels(rig.Control("turn_waist").Under(tools).PlacedAt(joints.Waist));
    }
}
