namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var skeleton = rig.Skeleton("buoy");
        var hull = skeleton.Root("hull");
        var lamp = skeleton.Root("lamp", at: new Vector3(0, 3, 0)); // finds CDY4004
        var floating = rig.Control("float").PlacedAt(hull);
        rig.Drive(hull).ByChannels(floating);
        rig.Drive(lamp).ByChannels(rig.Control("tilt").Under(floating).PlacedAt(lamp));
    }
}
