[assembly: RigConventions(NamePattern = "[a-z0-9]+(_[a-z0-9]+)*")]

namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var body = rig.Control("moveBody").PlacedAt(joints.Pelvis); // finds CDY1007
        rig.Drive(joints.Pelvis).ByChannels(body);
    }
}
