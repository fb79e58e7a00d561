namespace Harbour;

/// <summary>Sentences are begun in one place and finished in another.</summary>
public sealed class Clean : IRigDefinition
{
    private readonly Dictionary<string, Drive> begun = [];

    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var all = new[] { joints.Pelvis, joints.Waist, joints.Chest, joints.Head };
        foreach (var joint in all)
            begun[joint.Name] = rig.Drive(joint);
        Control? above = null;
        foreach (var joint in all)
        {
            var control = rig.Control($"turn_{joint}").PlacedAt(joint);
            if (above is { } carrier)
                control.Under(carrier);
            above = control;
            begun[joint.Name].ByChannels(control);
        }
    }
}
