// Read only: the name of the dial is known where it runs.
namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var jib = rig.Skeleton("crane").Root("jib", at: new Vector3(0, 4, 0));
        var luff = rig.Control("luff").PlacedAt(jib).LimitTurn(Axis.X, -5, 20);
        rig.Drive(jib).ByChannels(luff);
        Swing(rig, luff.Dial(Environment.MachineName, 0, 1), luff, 18);
    }

    private static void Swing(RigDraft rig, Dial dial, Control control, float degrees) =>
        rig.Response(dial).Key(0, 0, slope: 60).Key(1, degrees, slope: -60).OntoTurn(control, Axis.X); // finds CDY5002
}
