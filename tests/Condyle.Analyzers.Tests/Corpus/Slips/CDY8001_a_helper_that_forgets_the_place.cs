namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        rig.Drive(joints.Pelvis).ByChannels(rig.Control("hips").PlacedAt(joints.Pelvis));
        Turn(rig, joints.Waist, rig.Control("turn_waist").PlacedAt(joints.Waist));
        Turn(rig, joints.Chest, rig.Control("turn_chest"));
    }

    private static void Turn(RigDraft rig, Joint joint, Control control) =>
        rig.Drive(joint).ByChannels(control); // finds CDY8001
}
