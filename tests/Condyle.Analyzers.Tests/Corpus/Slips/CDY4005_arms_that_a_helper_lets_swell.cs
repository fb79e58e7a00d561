namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        foreach (var side in Side.Both)
        {
            var above = Swell(rig, joints.Shoulder[side], root);
            rig.Drive(joints.Elbow[side]).ByChannels(rig.Control($"bend_{side}").Under(above).PlacedAt(joints.Elbow[side]));
        }
    }

    private static Control Swell(RigDraft rig, Joint joint, Control above)
    {
        var control = rig.Control($"swell_{joint}").Under(above).PlacedAt(joint).Unlock(Channels.ScaleY | Channels.ScaleZ);
        rig.Drive(joint).ByChannels(control).WithScale(); // finds CDY4005
        return control;
    }
}
