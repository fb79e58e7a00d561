// Read only: the name of the dial is known where it runs.
namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var lamp = rig.Skeleton("lamp").Root("lamp", at: new Vector3(0, 2, 0));
        var control = rig.Control("turn_lamp").PlacedAt(lamp);
        rig.Drive(lamp).ByChannels(control);
        Offer(control, Environment.MachineName);
    }

    private static void Offer(Control control, string name) => control.Dial($"{name}_tilt", -30, 30); // finds CDY5001
}
