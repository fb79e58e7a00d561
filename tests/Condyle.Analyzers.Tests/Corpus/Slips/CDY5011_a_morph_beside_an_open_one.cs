namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var lamp = rig.Skeleton("lamp").Root("lamp", at: new Vector3(0, 2, 0));
        var shade = lamp.Child("shade", at: new Vector3(0, -0.2f, 0.1f));
        var control = rig.Control("turn_lamp").PlacedAt(lamp);
        rig.Drive(lamp).ByChannels(control);
        var bright = control.Dial("bright", 0, 1);
        rig.Response(bright).Key(0, 0).Key(1, 1)
            .OntoMorph("lamp", Environment.MachineName)
            .OntoMorph("lamp", "glow").OntoTurn(shade, Axis.Y)
            .OntoMorph("lamp", "glow"); // finds CDY5011
    }
}
