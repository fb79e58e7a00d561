namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var chest = rig.Control("turn_chest").PlacedAt(rig.Spot(joints.Chest, new Vector3(0, 0.1f, 0)));
        rig.Drive(joints.Chest).ByChannels(chest); // finds CDY8001
        rig.Drive(joints.Head).ByChannels(rig.Control("turn_head").Under(chest).PlacedAt(rig.Spot(joints.Head, new Vector3(0.2f, 0, 0)))); // finds CDY8001
    }
}
