using System.Numerics;
using Condyle;
using Condyle.Runtime;

namespace Quayside.Tests;

/// <summary>The crate clip looks right: in numbers, what one would check by eye.</summary>
[Collection("stevedore")]
public sealed class LiftCrateTests(BakedStevedore baked)
{
    private const float Hold = 1.3f, Stand = 3.4f;

    /// <summary>The crate's width, and the palm's thickness on either side of it.</summary>
    private const float BetweenWrists = 0.4f + (2 * 0.015f);

    [Fact]
    public void The_hands_stay_as_far_apart_as_the_crate_is_wide_through_the_flip_and_after()
    {
        foreach (var (time, live) in Frames(from: Hold))
        {
            var apart = Vector3.Distance(At(live, "wrist_left"), At(live, "wrist_right"));
            Assert.True(Math.Abs(apart - BetweenWrists) < 0.005f, $"the wrists are {apart} m apart at {time} s");
        }
    }

    [Fact]
    public void The_hands_take_the_crate_near_the_ground_and_end_at_the_belly()
    {
        Assert.All(Frames(from: Hold, to: Hold), frame => Assert.InRange(At(frame.Live, "grip_left").Y, 0.05f, 0.3f));
        Assert.All(Frames(from: Stand), frame => Assert.InRange(At(frame.Live, "grip_left").Y, 0.9f, 1.2f));
    }

    [Fact]
    public void The_crate_only_goes_up_and_stays_level()
    {
        var (height, tilt) = (0f, Slope(Frames(from: Hold, to: Hold).Single().Live));
        foreach (var (time, live) in Frames(from: Hold))
        {
            var now = (At(live, "grip_left").Y + At(live, "grip_right").Y) / 2;
            Assert.True(now >= height - 1e-4f, $"the crate sinks at {time} s");
            Assert.True(Math.Abs(Slope(live) - tilt) < 15, $"the crate has tilted by {Slope(live) - tilt}° at {time} s");
            height = now;
        }
    }

    [Fact]
    public void Knees_and_elbows_bend_the_right_way_and_never_fold()
    {
        foreach (var (time, live) in Frames(from: 0))
        {
            foreach (var side in Side.Both)
            {
                Check($"knee_{side}", $"hip_{side}", $"ankle_{side}", most: 150);
                Check($"elbow_{side}", $"shoulder_{side}", $"wrist_{side}", most: 145);
            }

            void Check(string middle, string root, string tip, float most)
            {
                var (upper, lower) = (At(live, middle) - At(live, root), At(live, tip) - At(live, middle));

                // Both bends turn about the joints' own X axes, forwards for an elbow and backwards for a knee.
                var bend = Angle(upper, lower);
                Assert.True(bend < most, $"'{middle}' is bent by {bend}° at {time} s");
                Assert.True(bend < 1 || Vector3.Dot(Vector3.Cross(upper, lower), AxisX(live, middle)) > 0, $"'{middle}' bends the wrong way at {time} s");
            }
        }
    }

    [Fact]
    public void Feet_stand_still()
    {
        var rest = baked.Rig.NewInstance();
        foreach (var (time, live) in Frames(from: 0))
            Assert.All(new[] { "ankle_left", "toes_left", "ankle_right", "toes_right" }, joint => Assert.True(Vector3.Distance(At(live, joint), At(rest, joint)) < 1e-4f, $"'{joint}' slides at {time} s"));
    }

    [Fact]
    public void The_flip_does_not_show()
    {
        var before = new Dictionary<string, Vector3>();
        foreach (var (time, live) in Frames(from: 1.9f, to: 2.5f))
        {
            foreach (var joint in new[] { "elbow_left", "wrist_left", "elbow_right", "wrist_right" })
            {
                var now = At(live, joint);
                Assert.True(!before.TryGetValue(joint, out var was) || Vector3.Distance(was, now) < 0.03f, $"'{joint}' jumps at {time} s");
                before[joint] = now;
            }
        }
    }

    private IEnumerable<(float Time, RigInstance Live)> Frames(float from, float to = 4) => baked.Frames("lift_crate", from, to);

    private Vector3 At(RigInstance live, string joint) => live.JointWorld(baked.Rig.JointIndex(joint)).Translation;

    private Vector3 AxisX(RigInstance live, string joint) => Vector3.TransformNormal(Vector3.UnitX, live.JointWorld(baked.Rig.JointIndex(joint)));

    /// <summary>How steeply the left hand points down, in degrees: what the hands hold turns with them.</summary>
    private float Slope(RigInstance live)
    {
        var fingers = Vector3.TransformNormal(Vector3.UnitY, live.JointWorld(baked.Rig.JointIndex("wrist_left")));
        return MathF.Atan2(-fingers.Y, fingers.Z) * 180 / MathF.PI;
    }

    private static float Angle(Vector3 a, Vector3 b) => MathF.Acos(Math.Clamp(Vector3.Dot(Vector3.Normalize(a), Vector3.Normalize(b)), -1, 1)) * 180 / MathF.PI;
}
