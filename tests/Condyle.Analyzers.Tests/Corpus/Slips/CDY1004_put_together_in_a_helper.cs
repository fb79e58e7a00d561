namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        foreach (var joint in new[] { joints.Pelvis, joints.Chest, joints.Head })
            rig.Drive(joint).ByChannels(rig.Control(Path("body", joint.Name)).PlacedAt(joint)); // finds CDY1004
    }

    private static string Path(params string[] parts) => string.Join("/", parts);
}
