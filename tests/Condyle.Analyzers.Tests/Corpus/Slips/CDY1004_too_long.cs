namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var words = new[] { "turn", "the", "whole", "upper", "body", "of", "the", "dock", "worker", "about", "his", "waist", "by", "a", "lot" };
        rig.Drive(joints.Waist).ByChannels(rig.Control(string.Join('_', words)).PlacedAt(joints.Waist)); // finds CDY1004
    }
}
