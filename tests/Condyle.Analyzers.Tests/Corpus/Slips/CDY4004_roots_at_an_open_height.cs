namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var skeleton = rig.Skeleton("quay_wall");
        var height = 0.1f * Environment.ProcessorCount;
        var (first, second) = (
            skeleton.Root("first_fender", at: new Vector3(0, height, 0)),
            skeleton.Root("second_fender", at: new Vector3(2, height, 0))); // finds CDY4004
        var wall = rig.Control("wall");
        rig.Drive(first).ByChannels(rig.Control("press_first").Under(wall).PlacedAt(first));
        rig.Drive(second).ByChannels(rig.Control("press_second").Under(wall).PlacedAt(second));
    }
}
