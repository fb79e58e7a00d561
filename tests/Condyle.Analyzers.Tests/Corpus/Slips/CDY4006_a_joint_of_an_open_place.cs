// Read only: where the lamp stands depends on the machine.
[assembly: RigConventions(MostJoints = "20")]

namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var lamp = Fitted(joints.Head, "lamp", 0.01f * Environment.ProcessorCount);
        var body = rig.Control("body").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(body);
        rig.Drive(lamp).ByChannels(rig.Control("turn_lamp").Under(body).PlacedAt(lamp));
    }

    private static Joint Fitted(Joint above, string name, float height) => above.Child(name, at: new Vector3(0, height, 0)); // finds CDY4006
}
