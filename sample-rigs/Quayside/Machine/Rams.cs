using Condyle;

namespace Quayside.Machine;

/// <summary>A cylinder on the house and the ram in it, which holds the jib: they point at each other's ends, whatever the jib does.</summary>
internal static class Rams
{
    public static void Build(RigDraft rig, CraneSkeleton joints, Side side, Control slew, Control luff)
    {
        var foot = rig.Group($"cylinder_foot_{side}_group").Under(slew).PlacedAt(joints.Cylinder[side]);
        var head = rig.Group($"ram_head_{side}_group").Under(luff).PlacedAt(joints.Ram[side]);
        rig.Aim(joints.Cylinder[side]).At(head).Up(slew, Axis.X);
        rig.Aim(joints.Ram[side]).At(foot).Up(slew, Axis.X);
    }
}
