namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var world = rig.Control("world");
        var hips = rig.Control("hips").Under(world).PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(hips);
        var waist = Turn(rig, joints.Waist, hips);
        var chest = Turn(rig, joints.Chest, waist);
        foreach (var side in Side.Both)
            Turn(rig, joints.Shoulder[side], Turn(rig, joints.Collar[side], chest));
        Turn(rig, joints.Head, null);
    }

    private static Control Turn(RigDraft rig, Joint joint, Control? above)
    {
        var control = rig.Control($"turn_{joint}").PlacedAt(joint); // finds CDY5005
        if (above is { } node)
            control.Under(node);
        rig.Drive(joint).ByChannels(control);
        return control;
    }
}
