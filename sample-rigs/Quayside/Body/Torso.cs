using Condyle;

namespace Quayside.Body;

/// <summary>Pelvis, spine, neck and head, posed by their joints.</summary>
/// <param name="Hips">What the legs hang from.</param>
/// <param name="Chest">What the arms hang from.</param>
internal sealed record Torso(Control Hips, Control Chest)
{
    public static Torso Build(RigDraft rig, StevedoreSkeleton joints, Control space)
    {
        var body = rig.Control("body").Under(space).PlacedAt(joints.Pelvis);

        // Hips sway below a still chest, so they turn about the waist, and the pelvis keeps its distance from there.
        var hips = rig.Control("hips").Under(body).PlacedAt(joints.Waist).Lock(Channels.Move)
            .LimitTurn(Axis.X, -30, 30).LimitTurn(Axis.Y, -30, 30).LimitTurn(Axis.Z, -20, 20);
        rig.Drive(joints.Pelvis).ByChannels(hips).KeepingOffset();

        var waist = Turn(rig, joints.Waist, body, forwards: 45, backwards: 20, around: 25, aside: 25);
        var chest = Turn(rig, joints.Chest, waist, forwards: 40, backwards: 20, around: 30, aside: 20);
        var neck = Turn(rig, joints.Neck, chest, forwards: 35, backwards: 30, around: 35, aside: 25);
        Turn(rig, joints.Head, neck, forwards: 35, backwards: 40, around: 45, aside: 25);
        return new Torso(hips, chest);
    }

    private static Control Turn(RigDraft rig, Joint joint, Control above, float forwards, float backwards, float around, float aside)
    {
        var control = rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint).Lock(Channels.Move).OnLayer("torso")
            .LimitTurn(Axis.X, -backwards, forwards).LimitTurn(Axis.Y, -around, around).LimitTurn(Axis.Z, -aside, aside);
        rig.Drive(joint).ByChannels(control);
        return control;
    }
}
