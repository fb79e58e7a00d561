[assembly: RigConventions(JointScale = "forbidden")]

namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var body = rig.Control("body").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(body);
        var handles = rig.Group("handles_group").PlacedAt(body);
        rig.Drive(handles).ByChannels(body.Unlock(Channels.Scale)).WithScale();
        rig.Drive(joints.Head).ByChannels(rig.Control("turn_head").Under(body).PlacedAt(joints.Head));
    }
}
