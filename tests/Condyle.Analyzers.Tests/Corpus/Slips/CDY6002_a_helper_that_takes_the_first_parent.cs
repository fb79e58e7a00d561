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
        Control? above = null;
        foreach (var side in Side.Both)
        {
            above ??= Turn(rig, joints.Collar[side], chest);
            Hand(rig, joints, side, above.Value);
        }

        Turn(rig, joints.Collar.Right, chest);
    }

    private static Control Turn(RigDraft rig, Joint joint, Control above)
    {
        var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }

    private static void Hand(RigDraft rig, Docker joints, Side side, Control above)
    {
        var arm = rig.Control($"arm_{side}").PlacedAt(joints.Shoulder[side]);
        arm.Under(above); // finds CDY6002
        rig.Drive(joints.Shoulder[side]).ByChannels(arm);
    }
}
