namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var look = rig.Control("look").Under(root).PlacedAt(rig.Spot(joints.Head, new Vector3(0, 0.2f, 2)));
        rig.Aim(joints.Head).At(look).Along(Axis.Z); // finds CDY8001
    }
}
