namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        Turn(rig, joints.Head, "turn");
        Turn(rig, joints.Chest, "turn");
    }

    private static void Turn(RigDraft rig, Joint joint, string name) =>
        rig.Drive(joint).ByChannels(rig.Control(name).PlacedAt(joint)); // finds CDY1002
}
