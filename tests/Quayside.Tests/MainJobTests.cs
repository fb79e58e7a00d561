using Condyle.Runtime;
using Condyle.Tests.Shared;

namespace Quayside.Tests;

/// <summary>What the main job writes, held to the live rig and to programs that nobody here made.</summary>
public abstract class MainJobTests(BakedRig baked)
{
    private const double Metres = 2e-5, Degrees = 0.002;

    [Fact]
    public void Every_exported_joint_rests_as_it_was_delivered()
    {
        Assert.Empty(baked.Result.Rest.Moved);
        Assert.Empty(baked.Result.JointsNotInRig);
        Assert.InRange(baked.Result.Rest.Largest.Metres.Value, 0, 2e-6);
        Assert.InRange(baked.Result.Rest.Largest.Degrees.Value, 0, Degrees / 10);
    }

    [Fact]
    public void All_clips_are_baked_and_the_report_says_that_they_hold()
    {
        Assert.Equal(baked.Clips.Select(clip => clip.Name), baked.Result.Clips.Select(clip => clip.Clip));
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

    /// <summary>Against three.js in Node.js: GLTFLoader and AnimationMixer. Of the range of motion, some frames of every step.</summary>
    [SkippableFact]
    public void An_independent_library_plays_the_clips_to_the_live_rig()
    {
        var nodes = baked.Rig.Joints.Select(joint => baked.NodeOf(joint.Name)).ToList();
        foreach (var clip in baked.Clips)
        {
            var every = clip.Name == RangeOfMotion.ClipName ? 7 : 1;
            var times = baked.Frames(clip.Name, every: every).Select(frame => (double)frame.Time);
            foreach (var ((time, live), played) in baked.Frames(clip.Name, every: every).Zip(OutsideChecks.Play(baked.File, clip.Name, times, nodes)))
            {
                foreach (var joint in baked.Rig.Joints)
                {
                    var (there, here) = (new Frame(played[joint.Index]), Frame.Of(live.JointWorld(joint.Index)));
                    Assert.True(
                        there.MetresTo(here) <= Metres && there.DegreesTo(here) <= Degrees,
                        $"'{joint.Name}' is off by {there.MetresTo(here) * 1000} mm and {there.DegreesTo(here)}° at {time} s of {clip.Name}");
                }
            }
        }
    }
}

/// <inheritdoc/>
[Collection("stevedore")]
public sealed class StevedoreJobTests(BakedStevedore baked) : MainJobTests(baked);

/// <inheritdoc/>
[Collection("gull")]
public sealed class GullJobTests(BakedGull baked) : MainJobTests(baked);

/// <inheritdoc/>
[Collection("crane")]
public sealed class CraneJobTests(BakedCrane baked) : MainJobTests(baked);
