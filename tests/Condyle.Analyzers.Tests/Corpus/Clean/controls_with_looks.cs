namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var hips = rig.Control("hips").PlacedAt(joints.Pelvis).Shaped(ControlShape.Square, size: 0.3f, facing: Axis.X).Tinted(Tint.Sand).OnLayer("body");
        rig.Drive(joints.Pelvis).ByChannels(hips);
        foreach (var name in new[] { "bollard", "crate" })
            rig.Control(name).Lock(Channels.All).Shaped(ControlShape.Cross).OnLayer($"{name}_layer");
    }
}
