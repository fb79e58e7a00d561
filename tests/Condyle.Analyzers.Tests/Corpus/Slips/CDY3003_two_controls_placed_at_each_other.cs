namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var hook = rig.Control("hook").Under(root);
        var block = rig.Control("block").Under(root).PlacedAt(hook); // finds CDY3003
        hook.PlacedAt(block);
    }
}
