namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var jib = rig.Skeleton("crane").Root("jib", at: new Vector3(0, 4, 0));
        rig.Drive(jib).ByChannels(rig.Control("luff").PlacedAt(jib).LimitTurn(Axis.X, 60, -20)); // finds CDY5007
    }
}
