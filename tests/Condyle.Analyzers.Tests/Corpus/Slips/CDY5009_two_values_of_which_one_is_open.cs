// Read only: the value of a key is known where it runs.
namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var lamp = rig.Skeleton("lamp").Root("lamp", at: new Vector3(0, 2, 0));
        var control = rig.Control("turn_lamp").PlacedAt(lamp);
        rig.Drive(lamp).ByChannels(control);
        Ramp(rig.Response(control.Dial("tilt", -30, 30)), 30).OntoTurn(lamp, Axis.X);
    }

    private static Response Ramp(Response response, float end) =>
        response.Key(-end, 0).Key(end, Environment.ProcessorCount).Key(end, 20); // finds CDY5009
}
