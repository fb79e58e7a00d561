namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        rig.Drive(joints.Pelvis).ByChannels(rig.Control("hips").PlacedAt(joints.Pelvis));
        var lamp = joints.Head.Child("lamp", JointRole.Helper);
        var strap = rig.Chain(joints.Chest, lamp);
        var copy = strap.Copy("turns");
        var above = rig.Control("turn").PlacedAt(strap.Root);
        foreach (var joint in strap)
            rig.Drive(copy.Of(joint)).ByChannels(above = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint));
        rig.Blend(strap).From(copy, 1);
    }
}
