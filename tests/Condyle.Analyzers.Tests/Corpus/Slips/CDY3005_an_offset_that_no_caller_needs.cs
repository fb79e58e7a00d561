namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        Node above = root;
        foreach (var joint in new[] { joints.Waist, joints.Chest, joints.Head })
            above = Turn(rig, joint, above);
    }

    private static Control Turn(RigDraft rig, Joint joint, Node above)
    {
        var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
        rig.Drive(joint)
            .ByChannels(control)
            .KeepingOffset(); // finds CDY3005
        return control;
    }
}
