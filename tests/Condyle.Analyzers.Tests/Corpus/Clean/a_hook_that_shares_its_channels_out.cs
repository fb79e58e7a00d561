namespace Harbour;

public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var bridge = rig.Skeleton("gantry").Root("bridge", JointRole.Helper, at: new Vector3(0, 8, 0));
        var hook = bridge.Child("hook", at: new Vector3(0, -3, 0));
        var drive = rig.Control("drive_bridge").PlacedAt(bridge);
        rig.Drive(bridge).ByChannels(drive);

        // Each axis has its own source, and so has the scale.
        var trolley = rig.Control("trolley").Under(drive).PlacedAt(hook);
        var hoist = rig.Control("hoist").Under(drive).PlacedAt(hook);
        var swing = rig.Control("swing").Under(drive).PlacedAt(hook).Unlock(Channels.Scale);
        rig.Drive(hook).ByChannels(trolley).Writing(Channels.MoveX);
        rig.Drive(hook).ByChannels(hoist).Writing(Channels.MoveY);
        rig.Drive(hook).ByChannels(swing).Writing(Channels.Turn);
        rig.Drive(hook).ByChannels(swing).WithScale().Writing(Channels.Scale);
    }
}
