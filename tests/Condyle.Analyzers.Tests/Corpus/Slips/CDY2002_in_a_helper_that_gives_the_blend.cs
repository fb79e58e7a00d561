namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var look = rig.Control("look").Under(root).PlacedAt(joints.Head);
        Follow(rig, joints.Head, look);
    }

    private static NodeBlend Follow(RigDraft rig, Joint joint, Control by) => rig.Blend((Node)joint).From(by, 1f); // finds CDY2002
}
