using System.Numerics;
using Condyle.Runtime.Gltf;
using Condyle.Runtime.Tests.Gltf;

namespace Condyle.Runtime.Tests.Baking;

/// <summary>Which part of a clip is baked, how finely, as a loop or not, and what becomes of the way that the character goes.</summary>
public sealed class BakeRangeTests
{
    private static readonly CompiledRig Rig = CargoArm.Compiled();

    [Fact]
    public void A_part_of_a_clip_begins_at_zero_and_moves_as_the_whole_does_there()
    {
        var clip = CargoArm.Lift().Mark(0.2f, "reach").Mark(0.75f, "grip").Mark(1.9f, "rest");
        var whole = Bake.Run(Rig, clip);
        var part = Bake.Run(Rig, clip, new BakeSettings { From = 0.5f, To = 1.5f });
        Assert.Equal((0f, 1f, 31), (part.Times[0], part.Times[^1], part.Times.Count));
        Assert.True(part.Report.Holds);
        Assert.Equal(0.25f, Assert.Single(part.Markers).At, 1e-6);
        Assert.Equal("grip", part.Markers[0].Name);
        foreach (var track in part.Tracks.Where(track => track.Rotations is not null))
        {
            var of = whole.Tracks.Single(other => other.Joint == track.Joint).Rotations!;
            for (var frame = 0; frame < part.Times.Count; frame++)
                Assert.InRange(Math.Abs(Quaternion.Dot(track.Rotations![frame], of[15 + frame])), 1 - 1e-6, 1 + 1e-6);
        }
    }

    [Fact]
    public void Sub_frames_lie_evenly_between_frames()
    {
        var baked = Bake.Run(Rig, CargoArm.Lift(), new BakeSettings { FramesPerSecond = 25, SubFrames = 4 });
        Assert.Equal((2 * 25 * 4) + 1, baked.Times.Count);
        Assert.All(baked.Times.Index(), time => Assert.Equal(time.Index / 100.0, time.Item, 1e-6));
    }

    [Theory]
    [InlineData(-1f, 1f, 1, "can't be baked from -1 to 1 s. It lasts from 0 to 2 s: give a range within it.")]
    [InlineData(1f, 1f, 1, "can't be baked from 1 to 1 s.")]
    [InlineData(0f, 2.5f, 1, "can't be baked from 0 to 2.5 s.")]
    [InlineData(0f, 2f, 0, "can't be baked with 0 samples of a frame. Give a number from 1 to 64.")]
    public void A_range_that_cant_be_is_refused(float from, float to, int subFrames, string told) => Assert.Contains(
        told, Assert.Throws<BadInputException>(() => Bake.Run(Rig, CargoArm.Lift(), new BakeSettings { From = from, To = to, SubFrames = subFrames })).Message, StringComparison.Ordinal);

    [Fact]
    public void A_loop_ends_exactly_as_it_begins_and_turns_on_the_short_way()
    {
        var round = new Clip("round", 3).TurnAbout("world", Axis.Y, (0, 0), (1, 120), (2, 240), (3, 360)).MoveAlong("waist", Axis.Y, (0, 0), (1.3f, -0.2f), (3, 0));
        var baked = Bake.Run(Rig, round, new BakeSettings { Loop = true });
        Assert.True(baked.Report.Holds);
        foreach (var track in baked.Tracks)
        {
            Assert.Equal(track.Translations?[0], track.Translations?[^1]);
            if (track.Rotations is { } turns)
            {
                Assert.Equal(1, Math.Abs(Quaternion.Dot(turns[0], turns[^1])), 1e-6);
                Assert.True(turns[^1] == turns[0] || turns[^1] == -turns[0]);
                Assert.True(Quaternion.Dot(turns[^2], turns[^1]) >= 0);
            }
        }
    }

    [Fact]
    public void A_loop_that_doesnt_close_is_refused_with_the_joint_and_the_gap()
    {
        var step = new Clip("step", 1).MoveAlong("world", Axis.Z, (0, 0), (1, 0.5f));
        Assert.Matches(
            "^clip 'step': '[a-z_]+' doesn't end where it begins, so it can't loop: the joint is 500 mm and 0° away",
            Assert.Throws<BadInputException>(() => Bake.Run(Rig, step, new BakeSettings { Loop = true })).Message);
        Assert.True(Bake.Run(Rig, step, new BakeSettings { Loop = true, RootMotion = RootMotion.InPlace() }).Report.Holds);
    }

    [Fact]
    public void In_place_the_way_is_taken_off_and_together_with_it_the_motion_is_the_live_one()
    {
        var walk = Walk();
        var baked = Bake.Run(Rig, walk, new BakeSettings { RootMotion = RootMotion.InPlace("pelvis") });
        Assert.True(baked.Report.Holds);
        var travel = Assert.IsType<RootTravel>(baked.Travel);
        var (live, player) = (Rig.NewInstance(), new ClipPlayer(Rig, walk));
        var played = new Play(baked);
        for (var frame = 0; frame < baked.Times.Count; frame++)
        {
            player.Pose(live, baked.Times[frame]);
            live.Evaluate();
            var way = Matrix4x4.CreateFromQuaternion(travel.Rotations[frame]) * Matrix4x4.CreateTranslation(travel.Translations[frame]);
            foreach (var joint in Rig.Joints)
                AssertNear(played.World(joint.Index, frame) * way, live.JointWorld(joint.Index));
            Assert.Equal(0, travel.Translations[frame].Y);
        }

        Assert.True(travel.Translations[^1].Length() > 1);
        Assert.True(2 * Math.Acos(Math.Abs(travel.Rotations[^1].W)) > 0.5);
    }

    [Fact]
    public void Onto_the_root_the_root_goes_the_way_and_all_others_stay_where_they_are()
    {
        var walk = Walk();
        var baked = Bake.Run(Rig, walk, new BakeSettings { RootMotion = RootMotion.OntoRoot("elbow_left") });
        Assert.True(baked.Report.Holds);
        Assert.Null(baked.Travel);
        var (live, player) = (Rig.NewInstance(), new ClipPlayer(Rig, walk));
        var played = new Play(baked);
        var rest = Rig.NewInstance();
        rest.Evaluate();
        for (var frame = 0; frame < baked.Times.Count; frame++)
        {
            player.Pose(live, baked.Times[frame]);
            live.Evaluate();
            foreach (var joint in Rig.Joints.Where(joint => joint.Parent >= 0))
                AssertNear(played.World(joint.Index, frame), live.JointWorld(joint.Index));
            Assert.Equal(rest.JointWorld(0).Translation.Y, played.World(0, frame).Translation.Y, 1e-5);
        }
    }

    [Fact]
    public void A_joint_that_cant_show_the_way_is_told()
    {
        Assert.Contains("'holder' is the root joint itself", Refusal(RootMotion.OntoRoot("holder")), StringComparison.Ordinal);
        Assert.Contains("there is no joint 'pelwis' to show the way", Refusal(RootMotion.InPlace("pelwis")), StringComparison.Ordinal);

        static string Refusal(RootMotion motion) => Assert.Throws<BadInputException>(() => Bake.Run(Rig, Walk(), new BakeSettings { RootMotion = motion })).Message;
    }

    [Fact]
    public void Markers_and_the_way_are_in_the_files_extras()
    {
        using var folder = new TemporaryFolder();
        var delivered = folder.Write("delivered.gltf", DeliveredFile.Of(Rig).ToJsonString());
        RigBaker.Run(Rig, delivered, [Walk().Mark(0.5f, "left_foot_down")], folder["out.glb"], new BakeSettings { RootMotion = RootMotion.InPlace() });
        var extras = GltfFile.Read(folder["out.glb"]).ParseJson()["animations"]![0]!["extras"]!;
        Assert.Equal("left_foot_down", extras["markers"]![0]!["name"]!.GetValue<string>());
        Assert.Equal(0.5, extras["markers"]![0]!["at"]!.GetValue<double>());
        Assert.Equal(61, extras["travel"]!["times"]!.AsArray().Count);
    }

    private static void AssertNear(Matrix4x4 a, Matrix4x4 b)
    {
        for (var row = 0; row < 4; row++)
            Assert.InRange(Vector4.Distance(a[row], b[row]), 0, 1e-4f);
    }

    private static Clip Walk() => CargoArm.Lift()
        .Move("world", at: 0).Move("world", at: 2, x: 0.7f, z: 1.2f)
        .TurnAbout("world", Axis.Y, (0, 0), (2, 70));

    /// <summary>Baked tracks by plain matrices.</summary>
    private sealed class Play(BakedClip clip)
    {
        public Matrix4x4 World(int joint, int frame)
        {
            var of = Rig.Joints[joint];
            var track = clip.Tracks.FirstOrDefault(track => track.Joint == joint);
            var local = Matrix4x4.CreateScale(track?.Scales?[frame] ?? of.RestScale)
                * Matrix4x4.CreateFromQuaternion(track?.Rotations?[frame] ?? of.RestRotation)
                * Matrix4x4.CreateTranslation(track?.Translations?[frame] ?? of.RestTranslation);
            return of.Parent < 0 ? local : local * World(of.Parent, frame);
        }
    }
}
