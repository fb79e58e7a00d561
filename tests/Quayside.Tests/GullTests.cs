using System.Numerics;
using Condyle;
using Condyle.Runtime;

namespace Quayside.Tests;

/// <summary>The gull folds, looks and stands as gulls do: in numbers, what one would check by eye.</summary>
[Collection("gull")]
public sealed class GullTests(BakedGull baked)
{
    private const float Jump = 1.15f;

    private static readonly string[] Bones = ["shoulder", "elbow", "wrist"];

    private static readonly string[][] Rows = [.. new[] { ("tertial", 3), ("secondary", 6), ("primary", 6) }.Select(row => Enumerable.Range(1, row.Item2).Select(i => $"{row.Item1}_{i}").ToArray())];

    private static readonly string[] Toes = [.. new[] { "toe_inner", "toe_middle", "toe_outer" }.SelectMany(toe => new[] { $"{toe}_1", $"{toe}_2" })];

    [Fact]
    public void Its_wings_fold_as_mirror_images()
    {
        foreach (var (fold, live) in Folding())
            AssertMirrored(live, $"folded by {fold}");
    }

    /// <summary>The neck lies along a curve and nothing else has it, so its controls are found from the joints alone.</summary>
    [Fact]
    public void Its_neck_comes_back_from_its_joints()
    {
        var result = MotionMatch.Run(baked.Rig, JointMotion.FromGltf(baked.File, "take_off"), settings: new MotionMatchSettings { Rest = RestPolicy.KeepFrames, FramesPerSecond = 5 });
        Assert.True(result.Clip.Moves.ContainsKey("neck"), "the clip moves the neck");
        foreach (var joint in result.Joints.Where(joint => joint.Joint.StartsWith("neck", StringComparison.Ordinal) || joint.Joint == "head"))
            Assert.True(joint.Off.Metres.Value < 2e-5 && joint.Off.Degrees.Value < 0.05, $"{joint}\n{string.Join("\n", result.Notes)}");
    }

    [Fact]
    public void They_beat_as_mirror_images()
    {
        foreach (var (time, live) in baked.Frames("take_off"))
            AssertMirrored(live, $"{time} s");
    }

    [Fact]
    public void Nothing_of_a_wing_flips_while_it_folds()
    {
        var before = new Dictionary<string, Quaternion>();
        foreach (var (fold, live) in Folding())
        {
            foreach (var joint in Bones.Concat(Rows.SelectMany(row => row)).Select(joint => $"{joint}_left"))
            {
                var now = live.JointRotation(baked.Rig.JointIndex(joint));
                var turned = before.TryGetValue(joint, out var was) ? Frame.Of(Matrix4x4.CreateFromQuaternion(was)).DegreesTo(Frame.Of(Matrix4x4.CreateFromQuaternion(now))) : 0;
                Assert.True(turned < 3, $"'{joint}' turns by {turned}° from the step before, folded by {fold}");
                before[joint] = now;
            }
        }
    }

    [Fact]
    public void The_feathers_of_a_row_never_cross()
    {
        foreach (var (fold, live) in Folding())
        {
            foreach (var row in Rows)
            {
                foreach (var (inner, outer) in row.Zip(row.Skip(1)))
                {
                    // In each feather's own frame +Z is the side towards the wing's tip.
                    var apart = Vector3.Dot(Along(live, $"{outer}_left", Vector3.UnitY), Along(live, $"{inner}_left", Vector3.UnitZ));
                    Assert.True(apart > 0, $"'{outer}_left' lies over '{inner}_left', folded by {fold}");
                }
            }
        }
    }

    [Fact]
    public void Spread_they_reach_wide_and_folded_they_lie_along_the_body()
    {
        var (spread, folded) = (baked.Rig.NewInstance(), Folding().Last().Live);
        spread.Evaluate();
        Assert.True(Along(spread, "primary_6_left", Vector3.UnitY).X > 0.9f);
        Assert.InRange(At(spread, "primary_6_left").X, 0.35f, 0.45f);
        foreach (var feather in Rows.SelectMany(row => row).Select(feather => $"{feather}_left"))
        {
            // The trunk is some 0.16 m wide.
            Assert.InRange(At(folded, feather).X, 0.05f, 0.11f);
            Assert.True(Along(folded, feather, Vector3.UnitY).Z < -0.94f, $"'{feather}' doesn't point backwards");
        }
    }

    [Fact]
    public void It_stands_on_the_ground_and_stays_there_until_it_jumps()
    {
        var rest = baked.Rig.NewInstance();
        rest.Evaluate();
        foreach (var side in Side.Both)
        {
            Assert.All(Toes, toe => Assert.InRange(At(rest, $"{toe}_{side}").Y, 0.004f, 0.012f));
            foreach (var (time, live) in baked.Frames("take_off", to: Jump))
                Assert.All(Toes, toe => Assert.True(Vector3.Distance(At(live, $"{toe}_{side}"), At(rest, $"{toe}_{side}")) < 5e-4f, $"'{toe}_{side}' slides at {time} s"));
            foreach (var (time, live) in baked.Frames("take_off", from: Jump + 0.3f))
                Assert.All(Toes, toe => Assert.True(At(live, $"{toe}_{side}").Y > 0.05f, $"'{toe}_{side}' drags at {time} s"));
        }
    }

    [Fact]
    public void Its_wings_do_not_beat_into_the_ground()
    {
        // The longest feather is 0.305 m long.
        foreach (var (time, live) in baked.Frames("take_off"))
        {
            foreach (var feather in Rows[^1])
            {
                var tip = Vector3.Transform(new Vector3(0, 0.305f, 0), live.JointWorld(baked.Rig.JointIndex($"{feather}_left")));
                Assert.True(tip.Y > 0.01f, $"'{feather}_left' is {tip.Y} m above the ground at {time} s");
            }
        }
    }

    [Theory]
    [InlineData("range_of_motion")]
    [InlineData("take_off")]
    public void Its_ankles_bend_backwards(string clip)
    {
        foreach (var (time, live) in baked.Frames(clip, every: 2))
        {
            foreach (var side in Side.Both)
            {
                var (upper, lower) = (At(live, $"ankle_{side}") - At(live, $"knee_{side}"), At(live, $"ball_{side}") - At(live, $"ankle_{side}"));
                var bend = MathF.Atan2(Vector3.Dot(Vector3.Cross(upper, lower), Along(live, $"ankle_{side}", Vector3.UnitX)), Vector3.Dot(upper, lower));
                Assert.True(bend > -0.01f, $"'ankle_{side}' is bent by {bend * 180 / MathF.PI}° at {time} s");
            }
        }
    }

    [Fact]
    public void The_neck_keeps_its_length_and_the_head_stays_on_it()
    {
        string[] bones = ["neck_1", "neck_2", "neck_3", "neck_4", "head"];
        var rest = baked.Rig.NewInstance();
        rest.Evaluate();
        foreach (var clip in baked.Clips)
        {
            foreach (var (time, live) in baked.Frames(clip.Name, every: 2))
            {
                foreach (var (joint, next) in bones.Zip(bones.Skip(1)))
                {
                    var (was, now) = (Vector3.Distance(At(rest, joint), At(rest, next)), Vector3.Distance(At(live, joint), At(live, next)));
                    Assert.True(Math.Abs(was - now) < 1e-5f, $"'{joint}' is {now} m long and not {was} at {time} s of {clip.Name}");
                }
            }
        }
    }

    [Fact]
    public void The_head_looks_at_what_it_is_told_to_whatever_the_neck_does()
    {
        var live = baked.Rig.NewInstance();
        live.Evaluate();
        var (sight, rested) = (Vector3.TransformNormal(Vector3.UnitZ, Inverse(live, "head")), At(live, "head") + Vector3.UnitZ);
        var moved = new Vector3(0.3f, -0.2f, -0.4f);
        live.SetMove(baked.Rig.ControlIndex("look"), moved);
        live.SetMove(baked.Rig.ControlIndex("neck"), new Vector3(0.02f, -0.04f, 0.05f));
        live.SetSwitch(baked.Rig.SwitchIndex("turn_head.aim"), 1);
        live.Evaluate();
        var (looks, towards) = (Along(live, "head", sight), rested + moved - At(live, "head"));
        Assert.Equal(0, MathF.Atan2(Vector3.Cross(looks, towards).Length(), Vector3.Dot(looks, towards)) * 180 / MathF.PI, 0.1f);
    }

    [Fact]
    public void The_tail_fans_evenly_to_both_sides()
    {
        var live = baked.Rig.NewInstance();
        live.SetDial(baked.Rig.DialIndex("turn_tail.fan"), 1);
        live.Evaluate();
        string[] feathers = ["tail_feather_4_right", "tail_feather_3_right", "tail_feather_2_right", "tail_feather_1_right", "tail_feather", "tail_feather_1_left", "tail_feather_2_left", "tail_feather_3_left", "tail_feather_4_left"];
        foreach (var (one, other) in feathers.Zip(feathers.Skip(1)))
        {
            var (a, b) = (Along(live, one, Vector3.UnitY), Along(live, other, Vector3.UnitY));
            Assert.Equal(12.5f, MathF.Atan2(Vector3.Cross(a, b).Length(), Vector3.Dot(a, b)) * 180 / MathF.PI, 0.1f);
            Assert.True(b.X > a.X);
        }
    }

    [Fact]
    public void Its_toes_curl_down()
    {
        var (rest, live) = (baked.Rig.NewInstance(), baked.Rig.NewInstance());
        live.SetDial(baked.Rig.DialIndex("foot_left.curl"), 1);
        rest.Evaluate();
        live.Evaluate();
        foreach (var toe in Toes)
            Assert.True(Along(live, $"{toe}_left", Vector3.UnitY).Y < Along(rest, $"{toe}_left", Vector3.UnitY).Y - 0.5f, $"'{toe}_left' doesn't curl down");
    }

    /// <summary>Both wings from spread to folded by a hundredth each; it is one instance, evaluated anew for each.</summary>
    private IEnumerable<(float Fold, RigInstance Live)> Folding()
    {
        var live = baked.Rig.NewInstance();
        for (var step = 0; step <= 100; step++)
        {
            foreach (var side in Side.Both)
                live.SetDial(baked.Rig.DialIndex($"turn_shoulder_{side}.fold"), step / 100f);
            live.Evaluate();
            yield return (step / 100f, live);
        }
    }

    /// <summary>In place and along its bone: the sides' frames mirror so that +Y does.</summary>
    private void AssertMirrored(RigInstance live, string when)
    {
        foreach (var joint in Bones.Concat(Rows.SelectMany(row => row)))
        {
            var (left, right) = ($"{joint}_left", $"{joint}_right");
            var place = Vector3.Distance(At(live, left), Mirrored(At(live, right)));
            var along = Vector3.Distance(Along(live, left, Vector3.UnitY), Mirrored(Along(live, right, Vector3.UnitY)));
            var side = Vector3.Distance(Along(live, left, Vector3.UnitZ), Mirrored(Along(live, right, Vector3.UnitZ)));
            Assert.True(place < 2e-6f && along < 2e-5f && side < 2e-5f, $"'{left}' and '{right}' don't mirror each other: {place} m, {along}, {side}, {when}");
        }
    }

    private static Vector3 Mirrored(Vector3 at) => at with { X = -at.X };

    private Vector3 At(RigInstance live, string joint) => live.JointWorld(baked.Rig.JointIndex(joint)).Translation;

    private Vector3 Along(RigInstance live, string joint, Vector3 axis) => Vector3.TransformNormal(axis, live.JointWorld(baked.Rig.JointIndex(joint)));

    private Matrix4x4 Inverse(RigInstance live, string joint) => Matrix4x4.Invert(live.JointWorld(baked.Rig.JointIndex(joint)), out var inverse) ? inverse : default;
}
