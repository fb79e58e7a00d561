namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var frame = rig.Skeleton("winch").Root("frame");
        var (crank, drum) = (frame.Child("crank", at: new Vector3(0.3f, 1, 0)), frame.Child("drum", at: new Vector3(0, 1, 0)));
        var world = rig.Control("world").PlacedAt(frame);
        rig.Drive(frame).ByChannels(world);
        rig.Drive(crank).ByChannels(rig.Control("turn_crank").Under(world).PlacedAt(crank));
        rig.Response(rig.Angle(crank).About(Axis.X)).Key(-720, -180).Key(720, 180).OntoTurn(drum, Axis.X); // finds CDY5002
    }
}
