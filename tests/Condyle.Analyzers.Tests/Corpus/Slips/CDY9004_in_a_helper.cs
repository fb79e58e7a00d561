namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        foreach (var joint in new[] { joints.Pelvis, joints.Head })
            Follow(rig, joint, rig.Control($"move_{joint}").PlacedAt(joint));

        static void Follow(RigDraft rig, Joint joint, Control control) =>
            rig.Drive(joint).ByChannels(control)
                .Accept("CDY3001", because: "It was by matrix once."); // finds CDY9004
    }
}
