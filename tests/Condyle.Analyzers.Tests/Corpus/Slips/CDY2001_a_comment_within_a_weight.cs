namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var (look, nod) = (rig.Control("look").Under(root).PlacedAt(joints.Head), rig.Control("nod").Under(root).PlacedAt(joints.Head));
        var amount = look.Switch("amount");
        rig.Blend((Node)joints.Head)
            .From(look, amount.Inverse)
            .From(nod, amount /* of the look */ .Inverse); // finds CDY2001
    }
}
