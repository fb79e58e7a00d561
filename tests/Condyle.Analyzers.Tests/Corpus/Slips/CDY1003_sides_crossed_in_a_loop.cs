namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        foreach (var side in Side.Both)
        {
            var foot = joints.Ankle[side.Opposite];
            rig.Drive(foot).ByChannels(rig.Control($"foot_{side}").PlacedAt(foot)); // finds CDY1003
        }
    }
}
