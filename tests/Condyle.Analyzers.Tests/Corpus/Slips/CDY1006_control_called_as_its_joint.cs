namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        foreach (var joint in new[] { joints.Head })
        {
            var control = rig.Control(joint.Name).PlacedAt(joint); // finds CDY1006
            rig.Drive(joint).ByChannels(control);
        }
    }
}
