// Read only: how many lamps there are is known where it runs.
namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var lamp = rig.Skeleton("lamp").Root("lamp", at: new Vector3(0, 2, 0));
        var control = rig.Control("turn_lamp").PlacedAt(lamp);
        rig.Drive(lamp).ByChannels(control);
        foreach (var name in Environment.GetCommandLineArgs())
            rig.Control($"{name}_lamp").Under(control).PlacedAt(lamp); // finds CDY5006
    }
}
