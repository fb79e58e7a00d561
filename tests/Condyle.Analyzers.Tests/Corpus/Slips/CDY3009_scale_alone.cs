[assembly: RigConventions(JointScale = "forbidden")]

namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var body = rig.Control("body").PlacedAt(joints.Pelvis).LimitMove(Axis.Y, 0, Environment.ProcessorCount).Unlock(Channels.Scale);
        rig.Drive(joints.Pelvis).ByChannels(body).Writing(Channels.Move | Channels.Turn);
        rig.Drive(joints.Pelvis).ByChannels(body).Writing(Channels.Scale); // finds CDY3009
    }
}
