namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var lamp = rig.Skeleton("lamp").Root("lamp", at: new Vector3(0, 2, 0));
        var control = rig.Control("turn_lamp").PlacedAt(lamp);
        rig.Drive(lamp).ByChannels(control);
        var tilt = control.Dial("tilt", 0, 1);
        var response = rig.Response(tilt);
        for (var i = 0; i <= 4; i++)
            response.Key(MathF.Round(i / 4f), i * 10); // finds CDY5009
        response.OntoTurn(lamp, Axis.X);
    }
}
