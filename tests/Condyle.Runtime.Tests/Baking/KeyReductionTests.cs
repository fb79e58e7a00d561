using System.Numerics;
using Condyle.Runtime.Tests.Gltf;
using Condyle.Tests.Shared;
using CsCheck;

namespace Condyle.Runtime.Tests.Baking;

/// <summary>Keys left out within a tolerance that holds in the world, and samples added where the motion needs them.</summary>
public sealed class KeyReductionTests
{
    /// <summary>Against a playback of the written file that is made from the text of the glTF 2.0 specification, at the chain's tip as at its root.</summary>
    [Fact]
    public void Keys_are_left_out_and_the_file_plays_within_the_tolerance_at_every_joint() => Gen.Select(Gen.Int[0, 50], Gen.Double[5e-5, 0.01], Gen.Double[0.01, 1]).Sample((frames, metres, degrees) =>
    {
        using var folder = new TemporaryFolder();
        var rig = CargoArm.Compiled(frames);
        var delivered = folder.Write("delivered.gltf", DeliveredFile.Of(rig).ToJsonString());
        var settings = new BakeSettings { Keys = new BakeTolerance(metres, degrees) };
        var report = RigBaker.Run(rig, delivered, [CargoArm.Lift()], folder["out.glb"], settings).Clips[0];
        Assert.True(report.Holds);
        Assert.Equal((metres, degrees), (report.AllowedMetres, report.AllowedDegrees));
        Assert.True(report.Keys < report.KeysOfEveryFrame);

        var (playback, live, player) = (DoublePlayback.Open(folder["out.glb"]), rig.NewInstance(), new ClipPlayer(rig, CargoArm.Lift()));
        foreach (var time in Bake.Run(rig, CargoArm.Lift()).Times)
        {
            player.Pose(live, time);
            live.Evaluate();
            var worlds = playback.World("lift_crate", time);
            foreach (var joint in rig.Joints)
                Assert.InRange(Vector3.Distance(new Vector3((float)worlds[joint.Index][12], (float)worlds[joint.Index][13], (float)worlds[joint.Index][14]), live.JointWorld(joint.Index).Translation), 0, metres + 1e-6);
        }
    }, iter: 12, threads: 1);

    [Fact]
    public void A_larger_tolerance_leaves_out_more_keys()
    {
        var rig = CargoArm.Compiled();
        long Keys(double millimetres) => Bake.Run(rig, CargoArm.Lift(), new BakeSettings { Keys = new BakeTolerance(millimetres / 1000, 1) }).Report.Keys;
        Assert.True(Keys(0.1) > Keys(1));
        Assert.True(Keys(1) > Keys(20));
    }

    [Fact]
    public void A_tolerance_below_rounding_is_refused()
    {
        var rig = CargoArm.Compiled();
        string Refusal(double metres, double degrees) => Assert.Throws<BadInputException>(() => Bake.Run(rig, CargoArm.Lift(), new BakeSettings { Keys = new BakeTolerance(metres, degrees) })).Message;
        Assert.Equal("clip 'lift_crate': can't be baked with keys within 0.001 mm and 1°. Give at least 0.05 mm and 0.005°.", Refusal(1e-6, 1));
        Assert.Contains("Give at least", Refusal(1e-3, double.NaN), StringComparison.Ordinal);
    }

    [Fact]
    public void Far_from_the_origin_where_rounding_is_as_large_the_tolerance_is_refused()
    {
        var rig = CargoArm.Compiled();
        var far = CargoArm.Lift().Move("world", at: 0, x: 5000);
        Assert.Contains("a float's rounding is nearly as large", Assert.Throws<BadInputException>(() => Bake.Run(rig, far, new BakeSettings { Keys = new BakeTolerance(1e-4, 1) })).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_step_between_two_frames_is_beyond_what_the_frame_rate_shows_and_more_samples_there_show_it()
    {
        // The switch goes over and comes back between two frames: no frame sees it.
        var rig = CargoArm.Compiled();
        var blink = new Clip("blink", 1).TurnAbout("turn_elbow_left", Axis.X, (0, 60)).Switch("hand_left.fk", (0, 0), (0.41f, 1), (0.42f, 0)).Stepped("hand_left.fk");
        var coarse = Bake.Run(rig, blink);
        Assert.True(coarse.Report.Holds);
        Assert.False(coarse.Report.BetweenBound.Holds);
        Assert.InRange(coarse.Report.BetweenBound.At, 0.4f, 0.4334f);
        Assert.True(coarse.Report.AroundChanges!.Metres.Value > 0.05);

        var fine = Bake.Run(rig, blink, new BakeSettings { Between = new BakeTolerance(0.001, 0.1) });
        Assert.True(fine.Report.BetweenBound is { Holds: true, IsAsked: true, Metres: 0.001 });
        Assert.InRange(fine.Report.Between.Metres.Value, 0, 0.001);
        Assert.Contains(0.41f, fine.Times);
        Assert.Contains(MathF.BitDecrement(0.41f), fine.Times);
        Assert.InRange(fine.Times.Count, 32, 40);
    }

    [Fact]
    public void Motion_that_frames_can_follow_stays_within_what_the_frame_rate_allows() => Gen.Select(Gen.Int[0, 200], Gen.Int[5, 120]).Sample((frames, rate) =>
    {
        var rig = CargoArm.Compiled(frames);
        if (Jumps(rig, CargoArm.Lift()))
            return;
        var report = Bake.Run(rig, CargoArm.Lift(), new BakeSettings { FramesPerSecond = rate }).Report;
        Assert.True(report.BetweenBound is { Holds: true, IsAsked: false }, report.BetweenBound.ToString());
    }, iter: 40, threads: 1);

    /// <summary>Where a twist goes over from one bend to the other near the clip's start, the first samples alone bend hardly at all.</summary>
    [Theory]
    [InlineData(51, 5)]
    [InlineData(173, 22)]
    [InlineData(196, 28)]
    public void A_motion_that_bends_little_at_its_very_start_is_held_to_what_it_bends_next(int frames, int rate) =>
        Assert.True(Bake.Run(CargoArm.Compiled(frames), CargoArm.Lift(), new BakeSettings { FramesPerSecond = rate }).Report.BetweenBound.Holds);

    /// <summary>
    /// Whether a joint turns by more than 2° within a millisecond, as where both copies of the arm come to stand half a turn apart: no frames can follow that.
    /// One that snapped by 3° was seen to stray beyond what 27 frames a second allow.
    /// </summary>
    private static bool Jumps(CompiledRig rig, Clip clip)
    {
        var (player, live, before) = (new ClipPlayer(rig, clip), rig.NewInstance(), new Quaternion[rig.Joints.Count]);
        for (var millisecond = 0; millisecond <= clip.Seconds * 1000; millisecond++)
        {
            player.Pose(live, millisecond / 1000f);
            live.Evaluate();
            foreach (var joint in rig.Joints)
            {
                var now = live.JointRotation(joint.Index);
                if (millisecond > 0 && MathF.Abs(Quaternion.Dot(now, before[joint.Index])) < MathF.Cos(1 * MathF.PI / 180))
                    return true;
                before[joint.Index] = now;
            }
        }

        return false;
    }

    [Theory]
    [InlineData(0.001)]
    [InlineData(0.0005)]
    public void Finer_samples_hold_a_bound_everywhere_that_is_looked_at(double metres)
    {
        var report = Bake.Run(CargoArm.Compiled(), CargoArm.Lift(), new BakeSettings { FramesPerSecond = 10, Between = new BakeTolerance(metres, 0.5) }).Report;
        Assert.True(report.BetweenBound.Holds, BakeReports.Text(report));
        Assert.InRange(report.Between.Metres.Value, 0, metres);
        Assert.True(report.Frames > 21);
    }
}
