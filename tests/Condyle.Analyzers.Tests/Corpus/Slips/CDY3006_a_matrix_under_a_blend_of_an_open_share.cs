namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var pole = rig.Group("boat_hook_group").PlacedAt(joints.Chest);
        Carry(rig, pole, joints.Chest);
        var grip = rig.Control("grip").Under(root).PlacedAt(joints.Chest);
        var held = grip.Switch("held", atRest: Environment.ProcessorCount % 2);
        rig.Blend(pole).From(grip, held).From(root, held.Inverse);
        rig.Control("boat_hook").Under(pole);
    }

    private static void Carry(RigDraft rig, Group load, Joint by) => rig.Drive(load).ByMatrix(by).KeepingOffset(); // finds CDY3006
}
