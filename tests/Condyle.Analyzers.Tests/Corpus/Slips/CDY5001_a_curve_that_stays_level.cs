namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var lamp = rig.Skeleton("lamp").Root("lamp", at: new Vector3(0, 2, 0));
        var control = rig.Control("turn_lamp").PlacedAt(lamp);
        rig.Drive(lamp).ByChannels(control);
        var tilt = control.Dial("tilt", -30, 30, unit: DialUnit.Degrees);
        rig.Response(tilt).Key(-30, 15).Key(0, 15).Key(30, 15).OntoTurn(lamp, Axis.X); // finds CDY5001
    }
}
