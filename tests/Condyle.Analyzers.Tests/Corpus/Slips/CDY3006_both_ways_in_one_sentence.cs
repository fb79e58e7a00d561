namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        foreach (var side in Side.Both)
            Bag(rig, joints.Wrist[side], root, side);
    }

    private static void Bag(RigDraft rig, Joint wrist, Control root, Side side)
    {
        var grip = rig.Control($"grip_{side}").Under(root).PlacedAt(wrist);
        rig.Drive(wrist).ByChannels(grip);
        var bag = rig.Group($"bag_{side}_group").PlacedAt(wrist);
        rig.Drive(bag).ByMatrix(wrist).ByChannels(grip); // finds CDY3006
        rig.Control($"bag_swing_{side}").Under(bag);
    }
}
