namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var (look, nod) = (rig.Control("look").Under(root).PlacedAt(joints.Head), rig.Control("nod").Under(root).PlacedAt(joints.Head));
        var amount = look.Switch("follow").AlsoOn(nod);
        rig.Blend(joints.Head).From(look, amount.Inverse).From(nod, amount);
        var nodding = nod.Dial("follow", 0, 1); // finds CDY1002
        rig.Response(nodding).Key(0, 0).Key(1, 20).OntoTurn(nod, Axis.X);
    }
}
