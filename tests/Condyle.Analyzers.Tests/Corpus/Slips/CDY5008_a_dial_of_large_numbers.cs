namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var drum = rig.Skeleton("winch").Root("drum", at: new Vector3(0, 2, 0));
        var control = rig.Control("turn_drum").PlacedAt(drum);
        rig.Drive(drum).ByChannels(control);
        var wound = control.Dial("wound", 10_000_000, 20_000_000); // finds CDY5008
        rig.Response(wound).Key(10_000_000, 1).Key(20_000_000, 2).OntoScale(drum, Axis.Y);
    }
}
