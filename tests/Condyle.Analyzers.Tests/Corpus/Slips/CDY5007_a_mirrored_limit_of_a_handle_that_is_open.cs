// Read only: the name of the control is known where it runs.
namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var control = rig.Control($"{Environment.MachineName}_hips").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(control);
        control.LimitTurn(Axis.Y, 30, -30); // finds CDY5007
        control.LimitTurn(Axis.Z, -20, 20);
    }
}
