namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var look = rig.Control("look").PlacedAt(joints.Head);
        rig.Drive(joints.Head).ByChannels(look);
        var nod = look.Dial("nod", -30, 30, 0);
        rig.Response(nod).Key(-30, -30).Key(30, 30); // finds CDY9003
    }
}
