[assembly: RigConventions(MostJoints = "20")]

namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var lamp = joints.Head.Child("lamp", at: new Vector3(0, 0.1f, 0)); // finds CDY4006
        var body = rig.Control("body").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(body);
        rig.Drive(lamp).ByChannels(rig.Control("turn_lamp").Under(body).PlacedAt(lamp));
    }
}
