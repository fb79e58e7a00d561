// Read only: the prefix is known to a run alone.
namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var prefix = Environment.GetEnvironmentVariable("PREFIX");
        rig.Drive(joints.Head).ByChannels(rig.Control($"{prefix}_group").PlacedAt(joints.Head)); // finds CDY1005
    }
}
