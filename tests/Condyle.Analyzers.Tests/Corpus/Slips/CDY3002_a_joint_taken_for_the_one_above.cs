namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        rig.Drive(joints.Pelvis).ByChannels(rig.Control("hips").PlacedAt(joints.Pelvis));
        foreach (var joint in new[] { joints.Chest, joints.Head })
            rig.Drive(joint).ByChannels(rig.Control($"turn_{joint}").PlacedAt(joint));
        rig.Drive(joints.Chest).ByChannels(rig.Control("turn_waist").PlacedAt(joints.Waist)); // finds CDY3002
    }
}
