namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var load = rig.Group("load_group");
        var hook = rig.Control("hook").Under(load);
        var block = rig.Control("block").Under(hook).LimitMove(Axis.Y, -Environment.ProcessorCount, 0); // finds CDY3003
        Hang(load, block);
        rig.Drive(joints.Head).ByChannels(rig.Control("look").Under(root).PlacedAt(joints.Head));
    }

    private static void Hang(Group group, Node above) => group.Under(above);
}
