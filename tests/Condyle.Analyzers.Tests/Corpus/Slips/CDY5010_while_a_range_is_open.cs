namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var lamp = rig.Skeleton("lamp").Root("lamp", at: new Vector3(0, 2, 0));
        var shade = lamp.Child("shade", at: new Vector3(0, -0.2f, 0.1f));
        var control = rig.Control("turn_lamp").PlacedAt(lamp);
        rig.Drive(lamp).ByChannels(control);
        control.Lock(Channels.Move).LimitMove(Axis.Y, -1 - (Environment.ProcessorCount % 3), 1); // finds CDY5010
        rig.Drive(shade).ByChannels(rig.Control("turn_shade").Under(control).PlacedAt(shade));
    }
}
