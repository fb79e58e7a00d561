// Read only: the ship's name is known to a run alone.
namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var ship = Environment.GetEnvironmentVariable("SHIP") ?? "barge";
        var crew = rig.Group($"{ship}_crew").PlacedAt(joints.Chest); // finds CDY1001
        rig.Drive(crew).ByMatrix(joints.Chest);
        rig.Drive(joints.Pelvis).ByChannels(rig.Control("hips").PlacedAt(joints.Pelvis));
    }
}
