namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        rig.Drive(joints.Pelvis).ByChannels(rig.Control("hips").PlacedAt(joints.Pelvis));
        foreach (var side in Side.Both)
        {
            var control = rig.Control($"turn_elbow_{side}").PlacedAt(joints.Shoulder[side]);
            rig.Drive(joints.Elbow[side]).ByChannels(control); // finds CDY8001
        }
    }
}
