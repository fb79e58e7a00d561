// Read only: the name of the group is known where it runs.
namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var hips = rig.Control("hips").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        var locker = rig.Group($"{Environment.MachineName}_group").Under(hips);
        locker.Unlock(Channels.All & ~Channels.Scale); // finds CDY5003
    }
}
