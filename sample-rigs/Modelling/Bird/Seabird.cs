using Modelling.Anatomy;
using Modelling.Geometry;

namespace Modelling.Bird;

/// <summary>
/// Where the gull's joints are. It stands with its wings spread level, 1.4 m from tip to tip. Metres and degrees, by eye, after pictures of herring gulls.
/// </summary>
internal static class Seabird
{
    public const int Primaries = 6;
    public const int Secondaries = 6;
    public const int Tertials = 3;
    public const int TailFeathers = 4; // to each side of the middle one

    public static readonly Vec WingTip = new(0.405, 0.283, 0.045); // of the bones; the feathers go on

    public static readonly IReadOnlyList<string> Toes = ["toe_inner", "toe_middle", "toe_outer"];

    public const double ToeLength = 0.058;

    public static JointTree Joints()
    {
        var joints = new JointTree();
        var root = joints.Add("root", null, Frame.At(default), movesSkin: false);
        var trunk = Spine(joints, root);
        Tail(joints, trunk);
        Wing(joints, trunk);
        Leg(joints, trunk);
        joints.AddRightSide();
        return joints;
    }

    private static ModelJoint Spine(JointTree joints, ModelJoint root)
    {
        (string Name, Vec At)[] spine =
        [
            ("trunk", new Vec(0, 0.218, -0.030)),
            ("neck_1", new Vec(0, 0.278, 0.105)),
            ("neck_2", new Vec(0, 0.310, 0.140)),
            ("neck_3", new Vec(0, 0.346, 0.156)),
            ("neck_4", new Vec(0, 0.383, 0.156)),
            ("head", new Vec(0, 0.416, 0.152)),
            ("", new Vec(0, 0.428, 0.200)),
        ];
        var above = root;
        for (var i = 0; i < spine.Length - 1; i++)
            above = joints.Add(spine[i].Name, above, Level(spine[i].At, spine[i + 1].At - spine[i].At));
        joints.Add("jaw", above, Level(new Vec(0, 0.416, 0.186), new Vec(0, -0.12, 1)));
        return joints["trunk"];
    }

    private static void Tail(JointTree joints, ModelJoint trunk)
    {
        var along = new Vec(0, -0.10, -1);
        var tail = joints.Add("tail", trunk, Level(new Vec(0, 0.170, -0.165), along));
        joints.Add("tail_feather", tail, tail.World with { Origin = tail.World.Out(Vec.Up * 0.02) });
        for (var i = 1; i <= TailFeathers; i++)
        {
            // Closed, but for a little; each lies under the one further in.
            var angle = Radians(3.5 * i);
            var at = tail.World.Out(new Vec(0.006 * i, 0.02, -0.0025 * i));
            joints.Add($"tail_feather_{i}_left", tail, Frame.Along(at, tail.World.Direction(new Vec(Math.Sin(angle), Math.Cos(angle), 0)), tail.World.Z));
        }
    }

    /// <summary>A positive turn about +X folds: the shoulder and the hand back, the elbow forwards; and it turns a feather outwards.</summary>
    private static void Wing(JointTree joints, ModelJoint trunk)
    {
        Vec shoulderAt = new(0.045, 0.265, 0.070), elbowAt = new(0.155, 0.277, 0.020), wristAt = new(0.300, 0.285, 0.075);
        var shoulder = joints.Add("shoulder_left", trunk, Frame.Along(shoulderAt, elbowAt - shoulderAt, -Vec.Front));
        var elbow = joints.Add("elbow_left", shoulder, Frame.Along(elbowAt, wristAt - elbowAt, Vec.Front));
        var wrist = joints.Add("wrist_left", elbow, Frame.Along(wristAt, WingTip - wristAt, -Vec.Front));

        Row(joints, shoulder, "tertial", Tertials, shoulderAt, elbowAt, from: 0.30, to: 0.95, first: 100, last: 92);
        Row(joints, elbow, "secondary", Secondaries, elbowAt, wristAt, from: 0.06, to: 0.94, first: 90, last: 76);
        Row(joints, wrist, "primary", Primaries, wristAt, WingTip, from: 0.05, to: 1, first: 66, last: 12);
    }

    /// <summary>A row of feathers along a bone. Angles are degrees from straight out, towards the tail.</summary>
    private static void Row(JointTree joints, ModelJoint bone, string name, int count, Vec start, Vec end, double from, double to, double first, double last)
    {
        for (var i = 0; i < count; i++)
        {
            var share = i / (count - 1.0);
            var angle = Radians(first + ((last - first) * share));
            // Each lies a little under the next one inwards.
            var at = start + (end - start) * (from + ((to - from) * share)) - Vec.Up * (0.002 * i);
            joints.Add($"{name}_{i + 1}_left", bone, Frame.Along(at, new Vec(Math.Cos(angle), 0, -Math.Sin(angle)), Vec.Left + Vec.Front * 0.5));
        }
    }

    private static void Leg(JointTree joints, ModelJoint trunk)
    {
        Vec hipAt = new(0.042, 0.208, -0.020), kneeAt = new(0.056, 0.176, 0.040), ankleAt = new(0.056, 0.092, -0.020), ballAt = new(0.056, 0.014, 0.004);
        var hip = joints.Add("hip_left", trunk, Frame.Along(hipAt, kneeAt - hipAt, Vec.Front));
        var knee = joints.Add("knee_left", hip, Frame.Along(kneeAt, ankleAt - kneeAt, -Vec.Front));
        var ankle = joints.Add("ankle_left", knee, Frame.Along(ankleAt, ballAt - ankleAt, Vec.Front));
        var ball = joints.Add("ball_left", ankle, Frame.Along(ballAt, Vec.Front, -Vec.Up));

        // A positive turn about +X curls a toe down.
        foreach (var (toe, apart) in Toes.Zip([-20.0, 0, 20]))
        {
            var frame = Frame.Along(ballAt + new Vec(0.004 * Math.Sign(apart), -0.006, 0.008), new Vec(Math.Sin(Radians(apart)), 0, Math.Cos(Radians(apart))), -Vec.Up);
            var first = joints.Add($"{toe}_1_left", ball, frame);
            joints.Add($"{toe}_2_left", first, frame with { Origin = frame.Out(Vec.Up * (ToeLength / 2)) });
        }
    }

    /// <summary>A frame in the bird's middle plane: a positive turn about its +X, the left, brings what points forwards down.</summary>
    private static Frame Level(Vec at, Vec bone) => Frame.Along(at, bone, Vec.Left.Cross(bone));

    private static double Radians(double degrees) => degrees * Math.PI / 180;
}
