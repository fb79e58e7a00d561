namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var hips = rig.Control("hips").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        var legs = rig.Group("hips").PlacedAt(hips); // finds CDY1001
        rig.Drive(legs).ByMatrix(hips);
        rig.Drive(joints.Waist).ByChannels(rig.Control("turn_waist").Under(legs).PlacedAt(joints.Waist));
    }
}
