namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var hull = rig.Skeleton("buoy").Root("hull");
        var mast = hull.Child("mast", at: new Vector3(0, 1, 0));
        var lamp = mast.Child("lamp", at: new Vector3(0, 2, 0));
        var drift = rig.Control("drift").PlacedAt(hull);
        rig.Drive(hull).ByChannels(drift);
        var stretch = rig.Control("stretch_mast").Under(drift).PlacedAt(mast).Unlock(Channels.ScaleY);
        rig.Drive(mast).ByChannels(stretch).WithScale(); // finds CDY4005
        rig.Drive(lamp).ByChannels(rig.Control("tilt_lamp").Under(stretch).PlacedAt(lamp));
    }
}
