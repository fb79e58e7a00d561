namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        Control above = root;
        foreach (var (joint, name) in new[] { (joints.Waist, "bend"), (joints.Chest, "lean"), (joints.Waist, "bow") })
            above = Turn(rig, joint, name, above);
    }

    private static Control Turn(RigDraft rig, Joint joint, string name, Control above)
    {
        var control = rig.Control(name).Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control); // finds CDY3002
        return control;
    }
}
