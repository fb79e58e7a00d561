// Read only: the name of the dial is known where it runs.
namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var lamp = rig.Skeleton("lamp").Root("lamp", at: new Vector3(0, 2, 0));
        var control = rig.Control("turn_lamp").PlacedAt(lamp);
        rig.Drive(lamp).ByChannels(control);
        var dial = control.Dial(Environment.MachineName, 1, 3, atRest: 4); // finds CDY5008
        rig.Response(dial).Key(1, 0).Key(3, 10).OntoTurn(lamp, Axis.X);
    }
}
