namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        // All axes alike, or a joint that has no turning joint below it.
        var hull = rig.Skeleton("buoy").Root("hull");
        var mast = hull.Child("mast", at: new Vector3(0, 1, 0));
        var lamp = mast.Child("lamp", at: new Vector3(0, 2, 0));
        var drift = rig.Control("drift").PlacedAt(hull);
        rig.Drive(hull).ByChannels(drift);
        var swell = rig.Control("swell_mast").Under(drift).PlacedAt(mast).Unlock(Channels.Scale);
        rig.Drive(mast).ByChannels(swell).WithScale();
        rig.Drive(lamp).ByChannels(rig.Control("glow").Under(swell).PlacedAt(lamp).Unlock(Channels.ScaleY)).WithScale();
    }
}
