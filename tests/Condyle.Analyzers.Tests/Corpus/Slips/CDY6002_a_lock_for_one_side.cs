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
        {
            var control = rig.Control($"turn_{joints.Collar[side]}").Under(chest).PlacedAt(joints.Collar[side]); // finds CDY6002
            rig.Drive(joints.Collar[side]).ByChannels(control);
            if (joints.Collar[side].Name.Contains("left"))
                control.Lock(Channels.Move);
        }
    }

    private static Control Turn(RigDraft rig, Joint joint, Control above)
    {
        var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }
}
