namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var world = rig.Control("world");
        var hips = rig.Control("hips").Under(world).PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        var chest = Turn(rig, joints.Chest, Turn(rig, joints.Waist, hips));
        foreach (var side in Side.Both)
            Turn(rig, joints.Elbow[side], Turn(rig, joints.Shoulder[side], Turn(rig, joints.Collar[side], chest)));

        // A hand on the left, a hook on the right, and a parrot on one shoulder.
        rig.Drive(joints.Wrist.Left).ByChannels(rig.Control("hand_left").Under(world).PlacedAt(joints.Wrist.Left));
        rig.Drive(joints.Wrist.Right).ByChannels(rig.Control("hook").Under(world).PlacedAt(joints.Wrist.Right));
        var parrot = joints.Shoulder.Left.Child("parrot_left", at: new Vector3(0, 0.2f, 0));
        Turn(rig, parrot, chest);
    }

    private static Control Turn(RigDraft rig, Joint joint, Control above)
    {
        var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }
}
