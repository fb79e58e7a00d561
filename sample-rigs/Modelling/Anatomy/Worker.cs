using Modelling.Geometry;

namespace Modelling.Anatomy;

/// <summary>
/// Where the dock worker's joints are. He is 1.80 m tall when he stands straight; his knees, elbows and fingers are slightly bent,
/// so that every bend has a plane. Segment lengths are the table's; depths (Z), angles and what the table lacks are set by eye.
/// </summary>
internal static class Worker
{
    public const double Stature = 1.80;

    private const double KneeBend = 6;      // degrees: the thigh forwards, and the shank back again
    private const double LegsApart = 2.5;   // degrees from the vertical
    private const double ArmsDown = 48;     // degrees below the horizontal
    private const double ElbowBend = 18;    // degrees
    private const double NeckHeight = 0.838; // of stature
    private const double Flesh = 0.05;      // metres of shoulder muscle between the joint and the outside
    private const double HipInset = 0.52;   // of half the hips' breadth

    /// <summary>Of the left eye, in metres, by eye.</summary>
    public static Vec EyeAt => new(0.031, 1.672, 0.0885);

    /// <summary>In metres; an adult's eyeball is 24 mm across (common practice, no source).</summary>
    public const double EyeRadius = 0.012;

    public static JointTree Joints()
    {
        var joints = new JointTree();
        var root = joints.Add("root", null, Frame.At(default), movesSkin: false);

        var thigh = Leaning(LegsApart, KneeBend) * (BodySegments.Thigh * Stature);
        var shank = Leaning(LegsApart, -KneeBend) * (BodySegments.Shank * Stature);
        var hip = new Vec(
            HipInset * BodySegments.Hips * Stature / 2,
            BodySegments.AnkleHeight * Stature - thigh.Y - shank.Y,
            0);

        var pelvis = Spine(joints, root, hip.Y);
        Leg(joints, pelvis, hip, thigh, shank);
        Arm(joints);
        joints.AddRightSide();
        return joints;
    }

    private static ModelJoint Spine(JointTree joints, ModelJoint root, double hipHeight)
    {
        // Bent knees lower everything above them by as much as they lower the hips.
        var lowered = BodySegments.AnkleHeight + BodySegments.Thigh + BodySegments.Shank - hipHeight / Stature;
        Vec At(double height, double depth) => new(0, (height - lowered) * Stature, depth);

        (string Name, Vec At)[] spine =
        [
            ("pelvis", At(0.560, -0.010)),
            ("waist", At(BodySegments.WaistHeight, -0.015)),
            ("chest", At(0.715, -0.030)),
            ("neck", At(NeckHeight, -0.035)),
            ("head", At(BodySegments.ChinHeight + 0.020, -0.010)),
            ("", At(1.000, -0.005)),
        ];
        var above = root;
        for (var i = 0; i < spine.Length - 1; i++)
            above = joints.Add(spine[i].Name, above, Frame.Along(spine[i].At, spine[i + 1].At - spine[i].At, Vec.Front));

        // An eye looks along its +Y; a positive turn about its +X lowers its sight.
        joints.Add("eye_left", joints["head"], Frame.Along(EyeAt, Vec.Front, -Vec.Up));
        return joints["pelvis"];
    }

    private static void Leg(JointTree joints, ModelJoint pelvis, Vec hipAt, Vec thigh, Vec shank)
    {
        var kneeAt = hipAt + thigh;
        var ankleAt = kneeAt + shank;
        var toesAt = new Vec(ankleAt.X + 0.012, 0.028, ankleAt.Z - 0.068 + 0.72 * BodySegments.Foot * Stature);

        var hip = joints.Add("hip_left", pelvis, Frame.Along(hipAt, thigh, -Vec.Front));
        joints.Add("hip_twist_left", hip, hip.World with { Origin = hipAt + thigh * 0.5 });
        var knee = joints.Add("knee_left", hip, Frame.Along(kneeAt, shank, -Vec.Front));
        var ankle = joints.Add("ankle_left", knee, Frame.Along(ankleAt, toesAt - ankleAt, -Vec.Up));
        joints.Add("toes_left", ankle, Frame.Along(toesAt, new Vec(0.05, 0, 1), -Vec.Up));
    }

    private static void Arm(JointTree joints)
    {
        var chest = joints["chest"];
        var neckHeight = joints["neck"].World.Origin.Y;
        var shoulderAt = new Vec(
            BodySegments.HalfShoulders * Stature - Flesh,
            neckHeight - (NeckHeight - BodySegments.ShoulderHeight) * Stature,
            -0.025);
        var collarAt = new Vec(0.025, shoulderAt.Y - 0.012, 0.030);

        var collar = joints.Add("collar_left", chest, Frame.Along(collarAt, shoulderAt - collarAt, Vec.Front));
        var drop = Radians(ArmsDown);
        var shoulder = joints.Add("shoulder_left", collar, Frame.Along(shoulderAt, new Vec(Math.Cos(drop), -Math.Sin(drop), 0), Vec.Front));
        var upperArm = BodySegments.UpperArm * Stature;
        joints.Add("shoulder_twist_left", shoulder, shoulder.World with { Origin = shoulder.World.Out(Vec.Up * (upperArm / 2)) });

        var forearm = Bent(shoulder.World, ElbowBend) with { Origin = shoulder.World.Out(Vec.Up * upperArm) };
        Frame Down(double part) => forearm with { Origin = forearm.Out(Vec.Up * (part * BodySegments.Forearm * Stature)) };
        var elbow = joints.Add("elbow_left", shoulder, forearm);
        var firstTwist = joints.Add("elbow_twist_1_left", elbow, Down(1.0 / 3));
        var secondTwist = joints.Add("elbow_twist_2_left", firstTwist, Down(2.0 / 3));
        var wrist = joints.Add("wrist_left", secondTwist, Down(1));
        Hand(joints, wrist);
    }

    /// <summary>In the left wrist's frame the fingers run along +Y, the thumb is on the side of +Z and the palm faces +X.</summary>
    private static void Hand(JointTree joints, ModelJoint wrist)
    {
        var scale = BodySegments.Hand * Stature / HandSegments.Length;
        var palm = wrist.World.X;

        var thumbSide = wrist.World.Direction(new Vec(0.45, 0.75, 0.62));
        var thumbBend = wrist.World.Direction(new Vec(1, 0.2, -0.9));
        Digit(joints, wrist, "thumb", wrist.World.Out(new Vec(8, HandSegments.Carpus - 3, 20) * scale), thumbSide, thumbBend,
            HandSegments.Thumb, scale, firstBend: 0, nextBend: 12);

        foreach (var finger in HandSegments.Fingers)
        {
            var spread = Radians(finger.Spread);
            Digit(joints, wrist, finger.Finger,
                wrist.World.Out(new Vec(0, HandSegments.Carpus + finger.Metacarpal, finger.Offset) * scale),
                wrist.World.Direction(new Vec(0, Math.Cos(spread), Math.Sin(spread))), palm,
                [finger.Proximal, finger.Middle, finger.Distal], scale, firstBend: 12, nextBend: 14);
        }

        // A held bar lies across the palm, towards the thumb: that is the prop's +Y.
        var palmMiddle = wrist.World.Out(new Vec(28, HandSegments.Carpus + 45, -4) * scale);
        joints.Add("grip_left", wrist, Frame.Along(palmMiddle, wrist.World.Z, -wrist.World.Y), movesSkin: false);
    }

    private static void Digit(
        JointTree joints, ModelJoint wrist, string name, Vec at, Vec direction, Vec bendsTo, IReadOnlyList<double> bones, double scale, double firstBend, double nextBend)
    {
        var frame = Bent(Frame.Along(at, direction, bendsTo), firstBend);
        var above = wrist;
        for (var i = 0; i < bones.Count; i++)
        {
            above = joints.Add($"{name}_{i + 1}_left", above, frame);
            frame = Bent(frame, nextBend) with { Origin = frame.Out(Vec.Up * (bones[i] * scale)) };
        }
    }

    private static Frame Bent(Frame frame, double degrees)
    {
        var angle = Radians(degrees);
        return Frame.Along(frame.Origin, frame.Direction(new Vec(0, Math.Cos(angle), Math.Sin(angle))), frame.Direction(new Vec(0, -Math.Sin(angle), Math.Cos(angle))));
    }

    private static Vec Leaning(double outwards, double forwards)
    {
        var (side, front) = (Radians(outwards), Radians(forwards));
        return new Vec(Math.Sin(side), -Math.Cos(side) * Math.Cos(front), Math.Cos(side) * Math.Sin(front));
    }

    private static double Radians(double degrees) => degrees * Math.PI / 180;
}
