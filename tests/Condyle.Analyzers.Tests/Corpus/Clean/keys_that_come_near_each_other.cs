namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var lamp = rig.Skeleton("lamp").Root("lamp", at: new Vector3(0, 2, 0));
        var control = rig.Control("turn_lamp").PlacedAt(lamp);
        rig.Drive(lamp).ByChannels(control);
        var tilt = control.Dial("tilt", -1, 1);
        rig.Response(tilt).Key(-0.001f, 0).Key(0, 10).Key(0.001f, 20).OntoTurn(lamp, Axis.X);
    }
}
