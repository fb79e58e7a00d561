namespace Harbour;

public sealed class Slip : IRigDefinition
{
    private const string Suffix = "_group";

    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        foreach (var joint in new[] { joints.Chest, joints.Head })
        {
            var control = rig.Control(Named(joint, "move")).PlacedAt(joint); // finds CDY1005
            rig.Drive(joint).ByChannels(control);
        }
    }

    private static string Named(Joint joint, string verb) => $"{verb}_{joint}" + Suffix;
}
