using System.Numerics;
using Condyle;
using Condyle.Runtime;

namespace Quayside.Tests;

/// <summary>The crane does what cranes do: in numbers, what one would check by eye.</summary>
[Collection("crane")]
public sealed class CraneTests(BakedCrane baked)
{
    private const float Shortest = 2, Longest = 18, AtRest = 7;

    /// <summary>How long the cylinders and the rams' rods are in the model, from their pivots.</summary>
    private const float Cylinder = 2.9f, Rod = 3.2f;

    public static TheoryData<string> Clips => ["range_of_motion", "load"];

    [Fact]
    public void The_hook_hangs_plumb_and_as_far_down_as_the_rope_is_long_wherever_the_jib_is()
    {
        var live = baked.Rig.NewInstance();
        for (var slewed = 0; slewed < 720; slewed += 24)
        {
            foreach (var luffed in new[] { -30, -11, 0, 33 })
            {
                foreach (var rope in new[] { Shortest, AtRest, Longest })
                {
                    live.SetMove(Control("travel"), new Vector3(slewed / 100f, 0, 0));
                    live.SetTurn(Control("slew"), Turn(Vector3.UnitY, slewed));
                    live.SetTurn(Control("luff"), Turn(Vector3.UnitX, luffed));
                    live.SetDial(baked.Rig.DialIndex("swing.rope"), rope);
                    live.Evaluate();
                    AssertPlumb(live, rope, $"slewed by {slewed}°, luffed by {luffed}°, the rope at {rope} m");
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Clips))]
    public void It_hangs_plumb_in_every_frame_in_which_it_is_not_swung(string clip)
    {
        foreach (var (time, live) in baked.Frames(clip))
        {
            live.SetTurn(Control("swing"), Quaternion.Identity);
            live.SetMove(Control("rope_bow"), Vector3.Zero);
            live.SetMove(Control("world"), Vector3.Zero);
            live.SetTurn(Control("world"), Quaternion.Identity);
            live.SetDial(baked.Rig.DialIndex("swing.rope"), AtRest);
            live.Evaluate();
            AssertPlumb(live, AtRest, $"{time} s of {clip}");
        }
    }

    [Fact]
    public void Swung_it_stays_at_the_rope_s_end_and_turns_with_the_rope()
    {
        foreach (var (time, live) in baked.Frames("load"))
        {
            live.SetDial(baked.Rig.DialIndex("swing.rope"), AtRest);
            live.Evaluate();
            var rope = At(live, "hook_block") - At(live, "jib_end");
            Assert.True(Math.Abs(rope.Length() - AtRest) < 1e-3f, $"the hook is {rope.Length()} m below the jib's end at {time} s");
            Assert.True(Degrees(rope, -Along(live, "hook_block", Vector3.UnitY)) < 0.05f, $"the hook doesn't hang in the rope's line at {time} s");
        }
    }

    [Theory]
    [MemberData(nameof(Clips))]
    public void Cylinders_and_rams_point_at_each_other_and_never_come_apart(string clip)
    {
        foreach (var (time, live) in baked.Frames(clip))
        {
            foreach (var side in Side.Both)
            {
                var (cylinder, ram) = ($"cylinder_{side}", $"ram_{side}");
                var between = At(live, ram) - At(live, cylinder);
                Assert.True(Degrees(between, Along(live, cylinder, Vector3.UnitY)) < 0.05f, $"'{cylinder}' points past the ram at {time} s");
                Assert.True(Degrees(-between, Along(live, ram, Vector3.UnitY)) < 0.05f, $"'{ram}' points past the cylinder at {time} s");
                Assert.True(between.Length() > Rod && between.Length() < Cylinder + Rod - 0.3f, $"the ends of '{ram}' are {between.Length()} m apart at {time} s");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Clips))]
    public void No_gap_shows_in_the_rope(string clip)
    {
        string[] joints = [.. Enumerable.Range(1, 6).Select(i => $"rope_{i}"), "hook_block"];
        foreach (var (time, live) in baked.Frames(clip))
        {
            for (var i = 1; i < joints.Length; i++)
            {
                var reaches = Vector3.Transform(new Vector3(0, -AtRest / 6, 0), live.JointWorld(baked.Rig.JointIndex($"strand_{i}")));
                Assert.True(Vector3.Distance(reaches, At(live, joints[i])) < 0.03f, $"'strand_{i}' ends {Vector3.Distance(reaches, At(live, joints[i])) * 1000} mm beside the next at {time} s");
            }
        }
    }

    [Fact]
    public void The_load_clip_lets_the_hook_down_to_the_ground_and_never_into_it()
    {
        const float HookBelowBlock = 1.29f;
        var lowest = baked.Frames("load").Min(frame => At(frame.Live, "hook_block").Y - HookBelowBlock);
        Assert.InRange(lowest, 0.1f, 0.6f);
    }

    private void AssertPlumb(RigInstance live, float rope, string when)
    {
        var below = At(live, "hook_block") - At(live, "jib_end");
        Assert.True(Vector3.Distance(below, new Vector3(0, -rope, 0)) < 2e-4f, $"the hook hangs {below} from the jib's end, {when}");
        Assert.True(Degrees(Along(live, "hook_block", Vector3.UnitY), Vector3.UnitY) < 0.01f, $"the hook's block isn't upright, {when}");
    }

    private int Control(string name) => baked.Rig.ControlIndex(name);

    private Vector3 At(RigInstance live, string joint) => live.JointWorld(baked.Rig.JointIndex(joint)).Translation;

    private Vector3 Along(RigInstance live, string joint, Vector3 axis) => Vector3.TransformNormal(axis, live.JointWorld(baked.Rig.JointIndex(joint)));

    private static Quaternion Turn(Vector3 axis, float degrees) => Quaternion.CreateFromAxisAngle(axis, degrees * MathF.PI / 180);

    private static float Degrees(Vector3 a, Vector3 b) => MathF.Atan2(Vector3.Cross(a, b).Length(), Vector3.Dot(a, b)) * 180 / MathF.PI;
}
