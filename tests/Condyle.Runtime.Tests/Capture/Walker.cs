using System.Globalization;
using System.Numerics;
using System.Text;

namespace Condyle.Runtime.Tests.Capture;

/// <summary>An actor of a few joints, as a capture system writes him: each joint with its own order of turns, in centimetres, arms stretched out at rest.</summary>
internal static class Walker
{
    public const string Hierarchy = """
        HIERARCHY
        ROOT hips
        {
            OFFSET 1.5 2.5 -0.5
            CHANNELS 6 Xposition Yposition Zposition Zrotation Xrotation Yrotation
            JOINT upperChest
            {
                OFFSET 0 20 1
                CHANNELS 3 Yrotation Xrotation Zrotation
                JOINT leftUpperArm
                {
                    OFFSET 15.0 20 0
                    CHANNELS 3 Xrotation Yrotation Zrotation
                    JOINT leftLowerArm
                    {
                        OFFSET 28 0 0
                        CHANNELS 3 Zrotation Yrotation Xrotation
                        JOINT leftHand
                        {
                            OFFSET 2.5e1 0 0
                            CHANNELS 3 Xrotation Zrotation Yrotation
                            End Site
                            {
                                OFFSET 8 0 0
                            }
                        }
                    }
                }
            }
            JOINT leftFoot
            {
                OFFSET 9 -90 2
                CHANNELS 3 Yrotation Zrotation Xrotation
                End Site
                {
                    OFFSET 0 -5 12
                }
            }
        }

        """;

    public static readonly string[] Joints = ["hips", "upperChest", "leftUpperArm", "leftLowerArm", "leftHand", "leftFoot"];

    /// <summary>Frames of 1/60 s in which all that can move does.</summary>
    public static string Text(int frames = 40, int seed = 3)
    {
        var random = new Random(seed);
        var speed = Enumerable.Range(0, 21).Select(_ => random.NextSingle() - 0.5f).ToArray();
        var text = new StringBuilder(Hierarchy).Append(CultureInfo.InvariantCulture, $"MOTION\nFrames: {frames}\nFrame Time: 0.016666667\n");
        for (var frame = 0; frame < frames; frame++)
        {
            var numbers = speed.Select((of, i) => i < 3 ? (i == 1 ? 95f : 0) + (of * frame) : of * 60 * MathF.Sin(frame * 0.08f));
            text.AppendJoin(' ', numbers.Select(number => number.ToString("0.####", CultureInfo.InvariantCulture))).Append(frame % 2 == 0 ? "\r\n" : " \n");
        }

        return text.ToString();
    }

    public static readonly JointMap Names = new JointMap()
        .With("hips", "pelvis").With("upperChest", "chest").With("leftUpperArm", "shoulder_left").With("leftLowerArm", "elbow_left").With("leftHand", "wrist_left").With("leftFoot", "ankle_left");

    /// <summary>The character that he plays: in metres, twice his size, arm hanging down, joints with axes of their own, an arm with IK and FK.</summary>
    public static CompiledRig Character(float armDegrees = -60)
    {
        return RigCompiler.Compile(Condyle.Rig.Build(new Rig(armDegrees)));
    }

    private sealed class Rig(float armDegrees) : IRigDefinition
    {
        public void Define(RigDraft rig)
        {
            var own = Quaternion.Normalize(new Quaternion(0.2f, -0.4f, 0.1f, 0.8f));
            var back = Quaternion.Inverse(own);
            var down = Turns.About(Axis.Z, armDegrees);
            var root = rig.Skeleton("walker").Root("root", JointRole.Helper);
            var pelvis = root.Child("pelvis", at: new Vector3(0, 1.9f, 0), turned: own);
            var chest = pelvis.Child("chest", at: Vector3.Transform(new Vector3(0, 0.4f, 0.02f), back));
            var shoulder = chest.Child("shoulder_left", at: Vector3.Transform(new Vector3(0.3f, 0.4f, 0), back), turned: back * down * own);
            var elbow = shoulder.Child("elbow_left", at: Vector3.Transform(new Vector3(0.56f, 0, 0.02f), back));
            var wrist = elbow.Child("wrist_left", at: Vector3.Transform(new Vector3(0.5f, 0, -0.02f), back));
            var ankle = pelvis.Child("ankle_left", at: Vector3.Transform(new Vector3(0.18f, -1.8f, 0.04f), back));

            var world = rig.Control("world");
            rig.Drive(root).ByChannels(world);
            var body = rig.Control("body").Under(world).PlacedAt(pelvis);
            var hips = rig.Control("hips").Under(body).PlacedAt(chest).Lock(Channels.Move);
            rig.Drive(pelvis).ByChannels(hips).KeepingOffset();
            var turnChest = rig.Control("turn_chest").Under(body).PlacedAt(chest).Lock(Channels.Move);
            rig.Drive(chest).ByChannels(turnChest);
            var turnAnkle = rig.Control("turn_ankle_left").Under(hips).PlacedAt(ankle).Lock(Channels.Move);
            rig.Drive(ankle).ByChannels(turnAnkle);

            var arm = rig.Chain(shoulder, wrist);
            var parts = rig.Group("arm_left_group").PlacedAt(shoulder);
            var armRoot = rig.Control("arm_root_left").Under(turnChest).PlacedAt(shoulder).Lock(Channels.Turn);
            rig.Drive(parts).ByMatrix(armRoot);
            var ik = arm.Copy("ik").Under(parts);
            var hand = rig.Control("hand_left").Under(world).PlacedAt(wrist);
            rig.TwoBone(ik).Reach(hand).Face(rig.Control("elbow_pole_left").Under(world).PlacedAt(arm.Bending(-Vector3.UnitZ).PolePoint(0.5f)).Lock(Channels.Turn));
            var fk = arm.Copy("fk").Under(parts);
            var above = armRoot;
            foreach (var joint in arm)
            {
                above = rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint).Lock(Channels.Move);
                rig.Drive(fk.Of(joint)).ByChannels(above);
            }

            var amount = hand.Switch("fk");
            rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount);
        }
    }
}
