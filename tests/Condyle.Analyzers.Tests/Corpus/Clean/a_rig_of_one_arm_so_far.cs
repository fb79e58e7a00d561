namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var collar = rig.Control("turn_collar_left").PlacedAt(joints.Collar.Left);
        rig.Drive(joints.Collar.Left).ByChannels(collar);
    }
}
