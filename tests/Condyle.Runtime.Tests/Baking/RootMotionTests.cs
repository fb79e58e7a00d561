using System.Numerics;
using Condyle.Runtime.Tests.Evaluation;
using Condyle.Runtime.Tests.Gltf;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Baking;

/// <summary>The way that a character goes, under roots that were delivered turned and scaled, as exporters of another up axis or unit leave them.</summary>
public sealed class RootMotionTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    public static TheoryData<Quaternion, Vector3, Vector3> Roots => new()
    {
        { Quaternion.Identity, Vector3.One, Vector3.Zero },
        { Quaternion.CreateFromAxisAngle(Vector3.UnitX, -MathF.PI / 2), Vector3.One, Vector3.Zero },
        { Quaternion.CreateFromAxisAngle(Vector3.UnitX, -MathF.PI / 2), new Vector3(0.01f), new Vector3(0.3f, 0.1f, -2) },
        { Quaternion.Normalize(new Quaternion(0.3f, -0.5f, 0.2f, 0.7f)), new Vector3(100), new Vector3(2, 0.5f, 1) },
        { Quaternion.Normalize(new Quaternion(0.3f, -0.5f, 0.2f, 0.7f)), new Vector3(-1, 1, 1), new Vector3(2, 0.5f, 1) },
        { Quaternion.Normalize(new Quaternion(-0.1f, 0.8f, 0.4f, 0.2f)), new Vector3(0.5f), new Vector3(1000, 0, 500) },
    };

    /// <summary>
    /// Against a playback of the written file from the text of the glTF 2.0 specification, in double precision, and the way worked out here from where the hips rest and are:
    /// the root goes it, or it is taken off all joints, and the report is right about how far each joint is off.
    /// </summary>
    [Theory]
    [MemberData(nameof(Roots))]
    public void The_way_goes_onto_the_root_or_off_it_wherever_that_rests(Quaternion turned, Vector3 scaled, Vector3 at)
    {
        var rig = Walker(turned, scaled, at);
        var clip = new Clip("stroll", 1).Move("hips", at: 0).Move("hips", at: 1, x: 1.3f, y: 0.1f, z: -0.8f).Turn("hips", 0).Turn("hips", 1, 15, 110, -20).Turn("turn_head", 0).Turn("turn_head", 1, 0, 40, 10);
        var delivered = folder.Write("walker.gltf", DeliveredFile.Of(rig).ToJsonString());
        foreach (var motion in new[] { RootMotion.OntoRoot("hips"), RootMotion.InPlace("hips"), RootMotion.InPlace() })
        {
            var report = RigBaker.Run(rig, delivered, [clip], folder["out.glb"], new BakeSettings { RootMotion = motion }).Clips[0];
            Assert.True(report.Holds, $"{motion}: {report.OnFrames}");
            var (playback, live, player) = (DoublePlayback.Open(folder["out.glb"]), rig.NewInstance(), new ClipPlayer(rig, clip));
            var shows = rig.JointIndex(motion.Joint ?? "root");
            live.Evaluate();
            var rest = rig.Joints.Select(joint => live.JointWorld(joint.Index)).ToArray();
            for (var frame = 0; frame < report.Frames; frame++)
            {
                player.Pose(live, frame / 30f);
                live.Evaluate();
                var way = Way(rest[shows], live.JointWorld(shows));
                Assert.True(Matrix4x4.Invert(way, out var back));
                var played = playback.World("stroll", (float)(frame / 30.0));
                foreach (var joint in rig.Joints)
                {
                    var should = motion.Way == RootMotionWay.InPlace ? live.JointWorld(joint.Index) * back : joint.Index == 0 ? rest[0] * way : live.JointWorld(joint.Index);
                    var actual = played[playback.NodeNamed(joint.Name)];
                    for (var number = 0; number < 16; number++)
                    {
                        // What is far from the origin is rounded by so much; the test's own way is in single precision.
                        var allowed = number >= 12 ? 3e-5 * Math.Max(1, at.Length() / 10) : 2e-5 * (joint.Index == 0 ? Math.Abs(scaled.X) : 1);
                        Assert.True(Math.Abs(should[number / 4, number % 4] - actual[number]) <= allowed, $"{motion.Way} {motion.Joint}, '{joint.Name}' in frame {frame}, number {number}: {actual[number]} instead of {should[number / 4, number % 4]}");
                    }
                }
            }
        }
    }

    /// <summary>Over the ground, and about the world's Y by the twist of the turn since rest; row vectors.</summary>
    private static Matrix4x4 Way(Matrix4x4 rest, Matrix4x4 now)
    {
        var turn = Quaternion.Normalize(Rotation(now) * Quaternion.Conjugate(Rotation(rest)));
        var heading = Matrix4x4.CreateFromQuaternion(Quaternion.Normalize(new Quaternion(0, turn.Y, 0, turn.W)));
        var (from, to) = (rest.Translation with { Y = 0 }, now.Translation with { Y = 0 });
        return heading * Matrix4x4.CreateTranslation(to - Vector3.Transform(from, heading));
    }

    private static Quaternion Rotation(Matrix4x4 world)
    {
        var (x, y) = (Vector3.Normalize(new(world.M11, world.M12, world.M13)), Vector3.Normalize(new(world.M21, world.M22, world.M23)));
        var z = Vector3.Cross(x, y);
        return Quaternion.CreateFromRotationMatrix(new Matrix4x4(x.X, x.Y, x.Z, 0, y.X, y.Y, y.Z, 0, z.X, z.Y, z.Z, 0, 0, 0, 0, 1));
    }

    private static CompiledRig Walker(Quaternion turned, Vector3 scaled, Vector3 at) => DefinedRig.Compile(rig =>
    {
        var root = rig.Skeleton("walker").Root("root", at: at, turned: turned, scaled: scaled);
        // The hips stand a metre above the root and look ahead, whatever the root is like.
        var (back, unit) = (Quaternion.Conjugate(turned), Vector3.Abs(scaled));
        var hips = root.Child("hips", at: Vector3.Transform(Vector3.UnitY, back) / scaled, turned: scaled.X < 0 ? Quaternion.Identity : back, scaled: Vector3.One / unit);
        var head = hips.Child("head", at: new Vector3(0, 0.7f, 0.1f), turned: Quaternion.Normalize(new Quaternion(0.1f, 0.2f, 0, 0.9f)));
        var control = rig.Control("hips").PlacedAt(hips);
        rig.Drive(hips).ByChannels(control);
        rig.Drive(head).ByChannels(rig.Control("turn_head").Under(control).PlacedAt(head));
    });
}
