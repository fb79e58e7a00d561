namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var jib = rig.Skeleton("crane").Root("jib", at: new Vector3(0, 4, 0));
        var luff = rig.Control("luff").PlacedAt(jib).LimitTurn(Axis.X, -60, 20);
        rig.Drive(jib).ByChannels(luff);
        var storm = luff.Dial("storm", 0, 1);
        rig.Response(storm).Key(0, 0).Key(1, -75).OntoTurn(luff, Axis.X); // finds CDY5002
    }
}
