namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var lamp = rig.Skeleton("lamp").Root("lamp", at: new Vector3(0, 2, 0));
        var control = rig.Control("turn_lamp").PlacedAt(lamp);
        rig.Drive(lamp).ByChannels(control);
        var tilt = control.Dial("tilt", -30, 30);
        rig.Response(tilt).Key(-30, -30).Key(0, 0).Key(0, 0).Key(30, 45).OntoTurn(lamp, Axis.X); // finds CDY5009
    }
}
