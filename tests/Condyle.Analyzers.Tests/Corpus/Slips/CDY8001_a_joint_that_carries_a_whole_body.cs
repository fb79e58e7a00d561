namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        rig.Drive(joints.Pelvis).ByChannels(rig.Control("hips")); // finds CDY8001
        rig.Drive(joints.Waist).ByChannels(rig.Control("turn_waist").PlacedAt(joints.Waist));
    }
}
