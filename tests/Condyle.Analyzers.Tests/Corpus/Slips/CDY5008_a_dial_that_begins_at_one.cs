namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var lamp = rig.Skeleton("lamp").Root("lamp", at: new Vector3(0, 2, 0));
        var control = rig.Control("turn_lamp").PlacedAt(lamp);
        rig.Drive(lamp).ByChannels(control);
        var grow = control.Dial("grow", 0.5f, 2); // finds CDY5008
        rig.Response(grow).Key(0.5f, 0.5f).Key(2, 2).OntoScale(lamp, Axis.Y);
    }
}
