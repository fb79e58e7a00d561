using Condyle.Runtime;
using Condyle.Tests.Shared;

namespace Quayside.Tests;

/// <summary>What the main job writes, held to the live rig and to programs that nobody here made.</summary>
public sealed class MainJobTests(BakedStevedore baked) : IClassFixture<BakedStevedore>
{
    private const double Metres = 2e-5, Degrees = 0.002;

    /// <summary>An answer of this many frames is a text of some 20 MB.</summary>
    private const int FramesAtOnce = 1000;

    [Fact]
    public void Every_exported_joint_rests_as_it_was_delivered()
    {
        Assert.Empty(baked.Result.Rest.Moved);
        Assert.Empty(baked.Result.JointsNotInRig);
        Assert.InRange(baked.Result.Rest.Largest.Metres.Value, 0, 2e-6);
        Assert.InRange(baked.Result.Rest.Largest.Degrees.Value, 0, Degrees / 10);
    }

    [Fact]
    public void Both_clips_are_baked_and_the_report_says_that_they_hold()
    {
        Assert.Equal(["range_of_motion", "lift_crate"], baked.Result.Clips.Select(clip => clip.Clip));
        Assert.All(baked.Result.Clips, clip => Assert.True(clip.Holds));
        Assert.All(baked.Result.Clips, clip => Assert.Equal(baked.Rig.Joints.Select(joint => joint.Name).Order(), clip.Joints.Select(joint => joint.Joint).Order()));
    }

    /// <summary>Against gltf-validator, the validator of the standard.</summary>
    [SkippableFact]
    public void The_file_is_valid()
    {
        var report = OutsideChecks.Validate(baked.File);
        Assert.True(report is { Errors: 0, Warnings: 0 }, string.Join(Environment.NewLine, report.Messages));
    }

    /// <summary>Against three.js in Node.js: GLTFLoader and AnimationMixer.</summary>
    [SkippableTheory]
    [InlineData("range_of_motion")]
    [InlineData("lift_crate")]
    public void An_independent_library_plays_every_frame_to_the_live_rig(string name)
    {
        var clip = baked.Clip(name);
        var report = baked.Result.Clips.Single(report => report.Clip == name);
        var nodes = baked.Rig.Joints.Select(joint => baked.NodeOf(joint.Name)).ToList();
        var (live, player) = (baked.Rig.NewInstance(), new ClipPlayer(baked.Rig, clip));
        foreach (var frames in Enumerable.Range(0, report.Frames).Chunk(FramesAtOnce))
        {
            var times = frames.Select(frame => Math.Min(frame / report.FramesPerSecond, report.Seconds)).ToList();
            foreach (var (index, played) in OutsideChecks.Play(baked.File, name, times.Select(time => (double)time), nodes).Index())
            {
                player.Pose(live, times[index]);
                live.Evaluate();
                foreach (var joint in baked.Rig.Joints)
                {
                    var (there, here) = (new Frame(played[joint.Index]), Frame.Of(live.JointWorld(joint.Index)));
                    Assert.True(
                        there.MetresTo(here) <= Metres && there.DegreesTo(here) <= Degrees,
                        $"'{joint.Name}' is off by {there.MetresTo(here) * 1000} mm and {there.DegreesTo(here)}° at {times[index]} s");
                }
            }
        }
    }
}
