namespace Harbour;

public sealed class Rig : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var lamp = rig.Skeleton("lamp").Root("lamp", at: new Vector3(0, 2, 0));
        var shade = lamp.Child("shade", at: new Vector3(0, -0.2f, 0.1f));
        var control = rig.Control("turn_lamp").PlacedAt(lamp);
        rig.Drive(lamp).ByChannels(control);
        var swing = control.Dial("swing", -10, 10);
        rig.Response(swing).Key(-10, -10).Key(10, 10).OntoTurn(shade, Axis.X).OntoTurn(shade, Axis.Y).OntoMove(shade, Axis.X).OntoTurn(lamp.Child("bulb", JointRole.Helper), Axis.X);
        rig.Response(swing).Key(-10, 0).Key(0, 0).Key(10, 5).OntoTurn(shade, Axis.X);
    }
}
