using Modelling.Anatomy;
using Modelling.Geometry;

namespace Modelling.Machine;

/// <summary>
/// Where the crane's parts turn: a portal on rails along the quay, a house that slews on it, a jib that luffs on two rams, and a rope over the jib's end.
/// Metres, by eye. It stands with its jib over the water, towards +Z. What isn't said otherwise has the world's axes.
/// </summary>
internal static class HarbourCrane
{
    public const double DeckHeight = 4.9;
    public const double JibLength = 13;
    public const double RopeLength = 7;
    public const int RopeJoints = 6;

    private const double JibAngle = 45;        // degrees above the horizontal
    private const double RamAlong = 4.5;       // from the jib's foot
    private const double RamBelow = 0.32;      // below its middle line

    public static JointTree Joints()
    {
        var joints = new JointTree();
        var root = joints.Add("root", null, Frame.At(default), movesSkin: false);
        var portal = joints.Add("portal", root, Frame.At(default), movesSkin: false);
        var house = joints.Add("house", portal, Frame.At(new Vec(0, DeckHeight, 0)), movesSkin: false);

        // +Y runs along the jib, and a positive turn about +X raises it.
        var angle = JibAngle * Math.PI / 180;
        var jib = joints.Add("jib", house, Frame.Along(new Vec(0, DeckHeight + 1, 1), new Vec(0, Math.Sin(angle), Math.Cos(angle)), Vec.Up), movesSkin: false);
        Ram(joints, house, jib);

        var end = joints.Add("jib_end", jib, Frame.At(jib.World.Out(Vec.Up * JibLength)), movesSkin: false);
        Rope(joints, end);
        joints.AddRightSide();
        return joints;
    }

    private static void Ram(JointTree joints, ModelJoint house, ModelJoint jib)
    {
        var foot = new Vec(0.62, DeckHeight + 0.35, 2.0);
        var head = jib.World.Out(new Vec(-0.62, RamAlong, -RamBelow));
        joints.Add("cylinder_left", house, Frame.Along(foot, head - foot, Vec.Front), movesSkin: false);
        joints.Add("ram_left", jib, Frame.Along(head, foot - head, Vec.Front), movesSkin: false);
    }

    /// <summary>The rope's joints hang below one another; each bears its part of the rope beside the next joint, so that a part can lengthen by itself.</summary>
    private static void Rope(JointTree joints, ModelJoint end)
    {
        var above = end;
        for (var i = 0; i < RopeJoints; i++)
        {
            above = joints.Add($"rope_{i + 1}", above, Frame.At(end.World.Origin - Vec.Up * (i * RopeLength / RopeJoints)), movesSkin: false);
            joints.Add($"strand_{i + 1}", above, above.World, movesSkin: false);
        }

        var block = joints.Add("hook_block", above, Frame.At(end.World.Origin - Vec.Up * RopeLength), movesSkin: false);
        joints.Add("hook", block, Frame.At(block.World.Origin - Vec.Up * 0.45), movesSkin: false);
    }
}
