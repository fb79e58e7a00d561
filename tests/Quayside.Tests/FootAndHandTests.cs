using System.Numerics;
using Condyle;
using Condyle.Runtime;

namespace Quayside.Tests;

/// <summary>The dials of the dock worker's feet and hands do what an animator expects of them.</summary>
public sealed class FootAndHandTests
{
    private const float Roll = 30;

    private static readonly CompiledRig Rig = RigCompiler.Compile(Condyle.Rig.Build(new Stevedore()));

    [Fact]
    public void A_foot_that_rolls_lifts_its_heel_over_a_ball_that_stays_on_the_ground()
    {
        foreach (var side in Side.Both)
        {
            var (rest, rolled) = (Posed(_ => { }), Posed(live => live.SetDial(Rig.DialIndex($"foot_{side}.roll"), Roll)));
            Assert.True(Vector3.Distance(At(rest, $"toes_{side}"), At(rolled, $"toes_{side}")) < 1e-4f, "the ball slides");

            // Seen from the side, the ankle turns about the ball by the dial's degrees.
            var flat = new Vector3(0, 1, 1);
            var (before, after) = (flat * (At(rest, $"ankle_{side}") - At(rest, $"toes_{side}")), flat * (At(rolled, $"ankle_{side}") - At(rolled, $"toes_{side}")));
            Assert.Equal(Roll, Degrees(before, after), 0.05f);
            Assert.True(after.Y > before.Y + 0.05f, "the heel doesn't lift");
            Assert.True(At(rolled, $"knee_{side}").Z > At(rest, $"knee_{side}").Z, "the knee goes backwards");
        }
    }

    [Fact]
    public void A_foot_goes_along_the_world_up_by_its_Y_and_forward_by_its_Z()
    {
        foreach (var side in Side.Both)
        {
            foreach (var way in new Vector3[] { new(0, 0.1f, 0), new(0, 0.05f, 0.1f), new(side.Sign * 0.05f, 0.05f, 0) })
            {
                var (rest, moved) = (Posed(_ => { }), Posed(live => live.SetMove(Rig.ControlIndex($"foot_{side}"), way)));
                Assert.True(Vector3.Distance(way, At(moved, $"ankle_{side}") - At(rest, $"ankle_{side}")) < 1e-4f, $"{way} brings the {side} ankle by {At(moved, $"ankle_{side}") - At(rest, $"ankle_{side}")}");
            }
        }
    }

    [Fact]
    public void Fingers_curl_towards_the_palm_alike_on_both_sides()
    {
        var fist = Posed(live =>
        {
            foreach (var side in Side.Both)
                live.SetDial(Rig.DialIndex($"hand_{side}.curl"), 1);
        });
        foreach (var finger in new[] { "index", "middle", "ring", "little" })
        {
            var (left, right) = (At(fist, $"{finger}_3_left"), At(fist, $"{finger}_3_right"));
            Assert.True(Vector3.Distance(left, right * new Vector3(-1, 1, 1)) < 1e-4f, $"'{finger}' isn't its own mirror image");
            Assert.True(Vector3.Distance(left, At(fist, "wrist_left")) < Vector3.Distance(At(Posed(_ => { }), $"{finger}_3_left"), At(fist, "wrist_left")) - 0.02f, $"'{finger}' doesn't close");
        }
    }

    [Fact]
    public void Eyes_look_where_their_control_goes()
    {
        var aside = Posed(live => live.SetMove(Rig.ControlIndex("eyes"), new Vector3(0.4f, 0.1f, 0)));
        var up = Posed(_ => { });
        foreach (var eye in new[] { "eye_left", "eye_right" })
        {
            var (before, after) = (Sight(up, eye), Sight(aside, eye));
            Assert.Equal(0, before.X, 1e-4f);
            Assert.True(after.X > 0.2f && after.Y > before.Y && after.Z > 0, $"'{eye}' looks along {after}");
        }
    }

    private static RigInstance Posed(Action<RigInstance> set)
    {
        var live = Rig.NewInstance();
        set(live);
        live.Evaluate();
        return live;
    }

    private static Vector3 At(RigInstance live, string joint) => live.JointWorld(Rig.JointIndex(joint)).Translation;

    private static Vector3 Sight(RigInstance live, string eye) => Vector3.TransformNormal(Vector3.UnitY, live.JointWorld(Rig.JointIndex(eye)));

    private static float Degrees(Vector3 a, Vector3 b) => MathF.Acos(Math.Clamp(Vector3.Dot(Vector3.Normalize(a), Vector3.Normalize(b)), -1, 1)) * 180 / MathF.PI;
}
