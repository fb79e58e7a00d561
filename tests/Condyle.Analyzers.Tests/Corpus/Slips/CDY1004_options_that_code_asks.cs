namespace Harbour;

// What the options say decides what else is built: by their text, as a pattern, as a whole, and among others.
public sealed class Slip : IRigDefinition
{
    private static readonly LimbOptions Plain = new() { HasLabels = false };

    public void Define(RigDraft rig)
    {
        var joints = Docker.In(rig);
        var systems = rig.Group("systems_group");
        var world = rig.Control("world").PlacedAt(joints.Pelvis);
        rig.Drive(joints.Pelvis).ByChannels(world);
        var hand = Plain with { Goal = "left hand" };
        var other = Plain with { Goal = "right hand" };
        var foot = Plain with { Goal = "left foot" };
        var last = Plain with { Goal = "right foot" };
        if (hand.Goal == "left hand")
            rig.Control("hook").Under(world);
        if (other is { Goal: "right hand" })
            rig.Control("lamp").Under(world);
        if (foot == Plain with { Goal = "left foot" })
            rig.Control("bucket").Under(world);
        if (new[] { last, Plain with { Goal = "right_foot" } }.Distinct().Count() == 2)
            rig.Control("rope").Under(world);
        rig.Limb(rig.Chain(joints.Shoulder.Left, joints.Wrist.Left), "arm", Side.Left, world, systems, world, hand); // finds CDY1004
        rig.Limb(rig.Chain(joints.Shoulder.Right, joints.Wrist.Right), "arm", Side.Right, world, systems, world, other); // finds CDY1004
        rig.Limb(rig.Chain(joints.Hip.Left, joints.Ankle.Left), "leg", Side.Left, world, systems, world, foot); // finds CDY1004
        rig.Limb(rig.Chain(joints.Hip.Right, joints.Ankle.Right), "leg", Side.Right, world, systems, world, last); // finds CDY1004
    }
}
