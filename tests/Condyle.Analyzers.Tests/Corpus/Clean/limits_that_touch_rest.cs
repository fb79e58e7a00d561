namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var hips = rig.Control("hips").PlacedAt(joints.Pelvis).LimitTurn(Axis.X, 0, 40).LimitTurn(Axis.Y, -30, 0).LimitTurn(Axis.Z, 0, 0);
        rig.Drive(joints.Pelvis).ByChannels(hips.LimitMove(Axis.Y, -0.3f, 0.1f).LimitMove(Axis.X, Environment.ProcessorCount, 500));
        hips.LimitMove(Axis.X, -1, 1);
    }
}
