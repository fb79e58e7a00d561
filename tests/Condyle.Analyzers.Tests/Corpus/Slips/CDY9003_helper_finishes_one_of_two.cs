namespace Harbour;

public sealed class Slip : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var look = rig.Control("look").PlacedAt(joints.Head);
        foreach (var joint in new[] { joints.Head, joints.Chest })
        {
            var drive = rig.Drive(joint); // finds CDY9003
            Finish(drive, joint == joints.Head ? look : null);
        }

        static void Finish(Drive drive, Control? source)
        {
            if (source is { } known)
                drive.ByChannels(known);
        }
    }
}
