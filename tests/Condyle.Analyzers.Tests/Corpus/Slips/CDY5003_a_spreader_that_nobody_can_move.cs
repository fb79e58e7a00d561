namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var beam = rig.Skeleton("spreader").Root("beam", at: new Vector3(0, 5, 0));
        var hoist = rig.Control("hoist").PlacedAt(beam);
        rig.Drive(beam).ByChannels(hoist);
        var spread = rig.Group("spread_group").Under(hoist).Unlock(Channels.MoveX); // finds CDY5003
        var lug = beam.Child("lug", at: new Vector3(1, 0, 0));
        rig.Drive(lug).ByChannels(rig.Control("turn_lug").Under(spread).PlacedAt(lug));
    }
}
