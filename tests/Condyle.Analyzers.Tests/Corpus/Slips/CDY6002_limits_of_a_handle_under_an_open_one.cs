// Read only: the name of the control above is known where it runs.
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
        var shrug = rig.Control($"{Environment.MachineName}_shrug").Under(chest).PlacedAt(joints.Chest);
        foreach (var side in Side.Both)
            Turn(rig, joints.Collar[side], shrug).LimitTurn(Axis.Y, -30, 15); // finds CDY6002
    }

    private static Control Turn(RigDraft rig, Joint joint, Control above)
    {
        var control = rig.Control($"turn_{joint}").Under(above).PlacedAt(joint);
        rig.Drive(joint).ByChannels(control);
        return control;
    }
}
