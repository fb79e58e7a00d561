namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var hips = rig.Control("hips").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        Turn(rig, joints.Waist, Turn(rig, joints.Pelvis, hips));
    }

    private static Control Turn(RigDraft rig, Joint joint, Control above)
    {
        var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint); // finds CDY5006
        if (joint.Name == "waist")
            rig.Drive(joint).ByChannels(above).KeepingOffset();
        return control;
    }
}
