namespace Harbour;

/// <summary>A name with both marks says how a rope runs, not where it hangs; "leftover" and "rightly" say no side at all.</summary>
public sealed class Clean : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var root = rig.Control("root").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(root);
        var rope = rig.Control("rope_left_to_right").Under(root).PlacedAt(joints.Wrist.Right);
        rig.Drive(joints.Wrist.Right).ByChannels(rope);
        rig.Drive(joints.Wrist.Left).ByChannels(rig.Control("hold_rightly").Under(root).PlacedAt(joints.Wrist.Left));
        rig.Drive(joints.Head).ByChannels(rig.Control("look_leftover").Under(root).PlacedAt(joints.Head));
    }
}
