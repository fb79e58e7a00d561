// Read only: whether the control is placed depends on the environment.
namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var hips = rig.Control("hips").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        var look = rig.Control("look");
        if (int.Parse(Environment.GetEnvironmentVariable("LOOKS") ?? "1") > 0)
            look.PlacedAt(joints.Head);
        rig.Drive(joints.Head).ByChannels(look);
    }
}
