namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var world = rig.Control("world");
        var hips = rig.Control("hips").Under(world).PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        var chest = Turn(rig, joints.Chest, Turn(rig, joints.Waist, hips));
        foreach (var side in Side.Both)
            Turn(rig, joints.Knee[side], Turn(rig, joints.Hip[side], hips));
        var collar = rig.Control("turn_collar_left").Under(chest).PlacedAt(joints.Collar.Left); // finds CDY6001
        rig.Drive(joints.Collar.Left).ByChannels(collar);
        Turn(rig, joints.Elbow.Left, Turn(rig, joints.Shoulder.Left, collar));
    }

    private static Control Turn(RigDraft rig, Joint joint, Control above)
    {
        var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }
}
