using System.Numerics;
using System.Text.Json;
using CsCheck;

namespace Condyle.Runtime.Tests.Baking;

public sealed class BakeTests
{
    private static readonly CompiledRig Rig = CargoArm.Compiled();

    [Fact]
    public void Baked_motion_is_live_motion_on_every_frame_whatever_the_joints_frames() => Gen.Int[0, 1000].Sample(frames =>
    {
        var report = Bake.Run(CargoArm.Compiled(frames), CargoArm.Lift()).Report;
        Assert.True(report.Holds, JsonSerializer.Serialize(report.OnFrames));
        Assert.True(report.OnFrames.Metres.Value > 0, "rounding leaves something");
        Assert.True(report.BetweenFrames.Metres.Value >= report.OnFrames.Metres.Value);
    }, iter: 25, threads: 1);

    [Fact]
    public void More_frames_bring_the_motion_between_frames_closer()
    {
        // A small bow, with the hand held by IK: an arm that is pulled straight has no speed limit, and no frame rate would do.
        var bow = new Clip("bow", 2).TurnAbout("waist", Axis.Y, (0, 0), (1, 30), (2, 0));
        double Between(float rate) => Bake.Run(Rig, bow, new BakeSettings { FramesPerSecond = rate }).Report.BetweenFrames.Metres.Value;
        Assert.InRange(Between(5) / Between(20), 12, 20); // a chord's error goes with the square of its length
    }

    [Fact]
    public void The_range_of_motion_bakes_too() => Assert.True(Bake.Run(Rig, RangeOfMotion.Of(Rig)).Report.Holds);

    [Theory]
    [InlineData(2, 30, 61, 1.9666667f)]
    [InlineData(1.99f, 30, 61, 1.9666667f)]
    [InlineData(0.01f, 30, 2, 0)]
    [InlineData(1, 29.97f, 31, 0.967634f)]
    public void Frames_begin_at_zero_and_the_last_is_the_clips_end(float seconds, float rate, int frames, float last)
    {
        var times = Bake.Run(Rig, new Clip("c", seconds).Move("waist", at: 0, y: -0.1f), new BakeSettings { FramesPerSecond = rate }).Times;
        Assert.Equal(frames, times.Count);
        Assert.Equal(0, times[0]);
        Assert.Equal(last, times[^2], 1e-5);
        Assert.Equal(seconds, times[^1]);
    }

    [Fact]
    public void Rotations_never_change_sign_from_frame_to_frame()
    {
        var spin = new Clip("spin", 4).TurnAbout("world", Axis.Y, (0, 0), (1, 170), (2, 340), (3, 510), (4, 680));
        var baked = Bake.Run(Rig, spin);
        foreach (var rotations in baked.Tracks.Select(track => track.Rotations).OfType<Quaternion[]>())
            Assert.All(rotations.Zip(rotations.Skip(1)), pair => Assert.True(Quaternion.Dot(pair.First, pair.Second) >= 0));
        Assert.True(baked.Report.Holds);
    }

    [Fact]
    public void Channels_that_stay_at_rest_are_dropped_and_no_others()
    {
        var tracks = Bake.Run(Rig, new Clip("c", 1).TurnAbout("turn_elbow_left", Axis.X, (0, 0), (1, 40)).Switch("hand_left.fk", at: 0, value: 1)).Tracks;
        var elbow = Assert.Single(tracks);
        Assert.Equal("elbow_left", Rig.Joints[elbow.Joint].Name);
        Assert.NotNull(elbow.Rotations);
        Assert.Null(elbow.Scales);
    }

    [Fact]
    public void Scale_is_baked_where_it_moves()
    {
        var tracks = Bake.Run(Rig, new Clip("c", 1).Scale("world", at: 0).Scale("world", at: 1, x: 1.2f, y: 1.2f, z: 1.2f)).Tracks;
        Assert.NotNull(tracks.Single(track => Rig.Joints[track.Joint].Name == "holder").Scales);
    }

    [Fact]
    public void A_clip_in_which_no_joint_moves_keeps_one_track_so_that_it_exists()
    {
        var track = Assert.Single(Bake.Run(Rig, new Clip("still", 1).Move("waist", at: 0)).Tracks);
        Assert.Equal(31, track.Rotations!.Length);
    }

    [Theory]
    [InlineData(0, "clip 'c': can't be baked at 0 frames per second. Give a frame rate from 1 to 1000.")]
    [InlineData(float.NaN, "clip 'c': can't be baked at NaN frames per second. Give a frame rate from 1 to 1000.")]
    [InlineData(5000, "clip 'c': can't be baked at 5000 frames per second. Give a frame rate from 1 to 1000.")]
    [InlineData(1000, "clip 'c': would have 2000000 frames at 1000 frames per second, more than 1000000. Bake it in parts, or at a lower frame rate.")]
    public void A_frame_rate_that_cant_be_is_refused(float rate, string message)
    {
        var clip = new Clip("c", 2000).Move("waist", at: 0);
        Assert.Equal(message, Assert.Throws<BadInputException>(() => Bake.Run(Rig, clip, new BakeSettings { FramesPerSecond = rate })).Message);
    }

    [Fact]
    public void A_value_that_is_no_number_is_told_with_joint_and_time()
    {
        var clip = new Clip("burst", 1).Move("waist", at: 0).Scale("world", at: 0).Scale("world", at: 1, x: 3e38f, y: 3e38f, z: 3e38f);
        var problem = Assert.Throws<BadInputException>(() => Bake.Run(Rig, clip));
        Assert.Matches("^clip 'burst': '[a-z_]+' at [0-9.]+ s gets a value that is no finite number on frame [0-9]+\\. ", problem.Message);
    }

    [Fact]
    public void An_exported_joint_that_follows_by_matrix_is_refused_by_name()
    {
        var rig = RigCompiler.Compile(Condyle.Rig.Build(new Mooring()));
        Assert.Equal(
            "rig 'Mooring': the exported joint 'buoy' follows by matrix, and an engine reads a joint's own translation, rotation and scale, so the motion would be lost (CDY3001). Drive by channels.",
            Assert.Throws<BadInputException>(() => Bake.Run(rig, new Clip("c", 1).Move("float", at: 0, y: 1))).Message);
    }

    [Fact]
    public void Progress_runs_up_to_one_and_a_bake_can_be_stopped()
    {
        var seen = new Seen();
        Bake.Run(Rig, CargoArm.Lift(), progress: seen);
        Assert.Equal(seen.Done.Order(), seen.Done);
        Assert.Equal(1, seen.Done[^1], 1e-9);
        Assert.InRange(seen.Done.Count, 10, 130);
        Assert.Throws<OperationCanceledException>(() => Bake.Run(Rig, CargoArm.Lift(), cancellation: new CancellationToken(canceled: true)));
    }

    /// <summary>So far from the origin these keys are refused: a bake that is stopped when it has sampled doesn't come to that.</summary>
    [Fact]
    public void A_bake_can_be_stopped_before_it_leaves_out_keys()
    {
        using var stop = new CancellationTokenSource();
        var (far, settings) = (CargoArm.Lift().Move("world", at: 0, x: 5000), new BakeSettings { Keys = new BakeTolerance(1e-4, 1) });
        Assert.Throws<BadInputException>(() => Bake.Run(Rig, far, settings));
        Assert.Throws<OperationCanceledException>(() => Bake.Run(Rig, far, settings, new Seen(done =>
        {
            if (done >= 0.5)
                stop.Cancel();
        }), stop.Token));
    }

    [Fact]
    public void A_report_is_json_with_every_joint()
    {
        var json = JsonSerializer.SerializeToElement(Bake.Run(Rig, CargoArm.Lift()).Report);
        Assert.Equal(Rig.Joints.Select(joint => joint.Name), json.GetProperty("Joints").EnumerateArray().Select(joint => joint.GetProperty("Joint").GetString()));
        Assert.True(json.GetProperty("BetweenFrames").GetProperty("Degrees").GetProperty("Value").GetDouble() > 0);
    }

    private sealed class Mooring : IRigDefinition
    {
        public void Define(RigDraft rig)
        {
            var chain = rig.Skeleton("mooring").Root("chain");
            var buoy = chain.Child("buoy", JointRole.Helper, Vector3.UnitY);
            rig.Drive(buoy).ByMatrix(rig.Control("float").PlacedAt(buoy)).Accept("CDY3001", "to see a bake refuse it");
        }
    }

    private sealed class Seen(Action<double>? then = null) : IProgress<BakeProgress>
    {
        public List<double> Done { get; } = [];

        public void Report(BakeProgress value)
        {
            Done.Add(value.Done);
            then?.Invoke(value.Done);
        }
    }
}
