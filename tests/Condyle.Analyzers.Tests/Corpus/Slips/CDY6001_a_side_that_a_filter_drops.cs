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
            Turn(rig, joints.Collar[side], chest);
        foreach (var side in Side.Both.Where(side => side.Sign < 0))
            Leg(rig, joints, side, hips);
    }

    private static Control Turn(RigDraft rig, Joint joint, Control above)
    {
        var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }

    private static void Leg(RigDraft rig, Docker joints, Side side, Control above)
    {
        var hip = rig.Control($"swing_{joints.Hip[side]}").Under(above).PlacedAt(joints.Hip[side]); // finds CDY6001
        rig.Drive(joints.Hip[side]).ByChannels(hip);
        Turn(rig, joints.Ankle[side], Turn(rig, joints.Knee[side], hip));
    }
}
