// Read only: the name of the control is known where it runs.
namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var world = rig.Control("world");
        var hips = rig.Control("hips").Under(world).PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        var waist = Turn(rig, joints.Waist, hips);
        var chest = Turn(rig, joints.Chest, waist);
        rig.Drive(joints.Head).ByChannels(rig.Control($"{Environment.MachineName}_head").PlacedAt(joints.Head)); // finds CDY5005
    }

    private static Control Turn(RigDraft rig, Joint joint, Control above)
    {
        var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }
}
