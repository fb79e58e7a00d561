namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var world = rig.Control("world");
        var hips = rig.Control("hips").Under(world).PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        var nod = hips.Dial("nod", -20, 20, unit: DialUnit.Degrees).AlsoOn(world);
        rig.Response(nod).Key(-20, -20).Key(20, 20).OntoTurn(joints.Head, Axis.X);
        var smile = hips.Dial("smile", 0, 1);
        rig.Response(smile).Key(0, 0).Key(1, 1).OntoMorph("face", "smile");
        var always = hips.Dial("glow", 0, 1, 1);
        rig.Response(always).Key(1, 1).OntoMorph("lantern", "glow");
    }
}
