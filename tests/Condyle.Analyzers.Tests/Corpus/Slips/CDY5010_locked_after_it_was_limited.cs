namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var waist = Handle(rig, "turn_waist", joints.Waist, root).LimitMove(Axis.Z, -0.02f, 0.02f); // finds CDY5010
        waist.Lock(Channels.MoveX).Lock(Channels.MoveZ);
    }

    private static Control Handle(RigDraft rig, string name, Joint joint, Control above)
    {
        var control = rig.Control(name).Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }
}
