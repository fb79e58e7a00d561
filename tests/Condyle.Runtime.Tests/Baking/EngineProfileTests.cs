using System.Numerics;
using System.Text.Json;
using Condyle.Runtime.Gltf;
using Condyle.Runtime.Tests.Gltf;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Baking;

public sealed class EngineProfileTests : IDisposable
{
    private static readonly CompiledRig Rig = CargoArm.Compiled();
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    /// <summary>Against a playback of the written file from the text of the glTF 2.0 specification: every place is the live one, scaled and turned as a whole.</summary>
    [Theory]
    [InlineData(1, Axis.Y)]
    [InlineData(100, Axis.Y)]
    [InlineData(100, Axis.Z)]
    public void Files_are_in_the_engines_unit_and_up_axis(float units, Axis up)
    {
        var profile = new EngineProfile("game") { UnitsPerMetre = units, Up = up };
        var (manifest, reports) = ProfileBaker.Write(Rig, Delivered(), [CargoArm.Lift()], profile, folder[""]);
        Assert.All(reports, report => Assert.True(report.Holds));
        var (playback, live, player) = (DoublePlayback.Open(folder[manifest.Files[0].Name]), Rig.NewInstance(), new ClipPlayer(Rig, CargoArm.Lift()));
        foreach (var time in new[] { 0, 0.5f, 1.3f, 2 })
        {
            player.Pose(live, time);
            live.Evaluate();
            var worlds = playback.World("lift_crate", time);
            foreach (var joint in Rig.Joints)
            {
                var at = live.JointWorld(joint.Index).Translation;
                var should = (up == Axis.Z ? new Vector3(at.X, -at.Z, at.Y) : at) * units;
                Assert.InRange(Vector3.Distance(should, Place(worlds[joint.Index])), 0, units * 2e-3f); // times between frames too
            }
        }
    }

    /// <summary>Against the standard's validator.</summary>
    [SkippableFact]
    public void Files_are_valid()
    {
        var profile = new EngineProfile("game") { UnitsPerMetre = 100, Up = Axis.Z, Additive = AdditiveReference.Rest, Bake = new BakeSettings { Keys = new BakeTolerance(0.001, 0.1) } };
        var (manifest, _) = ProfileBaker.Write(Rig, Delivered(), [CargoArm.Lift().Mark(1, "grip")], profile, folder[""]);
        var report = OutsideChecks.Validate(folder[manifest.Files[0].Name]);
        Assert.True(report is { Errors: 0, Warnings: 0 }, string.Join(Environment.NewLine, report.Messages));
    }

    [Fact]
    public void The_manifest_has_hashes_events_and_levels_and_the_same_work_leaves_the_same_bytes()
    {
        var profile = new EngineProfile("game") { Levels = [new DetailLevel("near"), new DetailLevel("far") { LeavesOut = ["hook", "wrist_*"] }] };
        var clip = CargoArm.Lift().Mark(1, "grip");
        var (manifest, _) = ProfileBaker.Write(Rig, Delivered(), [clip], profile, folder[""], "arm");
        Assert.Equal(["arm.game.far.glb", "arm.game.json", "arm.game.near.glb", "delivered.gltf"], folder.FileNames);
        Assert.Equal(manifest.ToJson(), File.ReadAllText(folder["arm.game.json"]));
        foreach (var file in manifest.Files)
            Assert.Equal(Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(folder[file.Name]))), file.Sha256);
        Assert.Equal("grip", JsonDocument.Parse(manifest.ToJson()).RootElement.GetProperty("clips")[0].GetProperty("events")[0].GetProperty("name").GetString());
        Assert.Equal((7, 5), (manifest.Files[0].JointsKept, manifest.Files[1].JointsKept));
        Assert.DoesNotContain("wrist_left", Moved("arm.game.far.glb"));
        Assert.Contains("wrist_left", Moved("arm.game.near.glb"));
        Assert.Equal(manifest.ToJson(), ProfileBaker.Write(Rig, Delivered(), [clip], profile, folder[""], "arm").Manifest.ToJson());
    }

    [Fact]
    public void What_a_level_leaves_out_that_this_skeleton_has_not_is_noted()
    {
        var profile = new EngineProfile("game") { Levels = [new DetailLevel("near"), new DetailLevel("far") { LeavesOut = ["hook", "wing_*"] }] };
        var (manifest, _) = ProfileBaker.Write(Rig, Delivered(), [CargoArm.Lift()], profile, folder[""], "arm");
        Assert.Equal([[], ["wing_*"]], manifest.Files.Select(file => file.NotInSkeleton));
        var file = JsonDocument.Parse(manifest.ToJson()).RootElement.GetProperty("files")[1];
        Assert.Equal("wing_*", file.GetProperty("notInSkeleton")[0].GetString());
        Assert.Equal(Rig.Joints.Count - 1, file.GetProperty("jointsKept").GetInt32());
    }

    [Fact]
    public void Files_of_levels_that_are_no_more_are_removed_and_others_stay()
    {
        EngineProfile Profile(params string[] levels) => new("game") { Levels = [.. levels.Select(level => new DetailLevel(level))] };
        ProfileBaker.Write(Rig, Delivered(), [CargoArm.Lift()], Profile("near", "far", "farther"), folder[""], "arm");
        folder.Write("arm.game.other.glb", "not of the bake");
        folder.Write("arm.game.far.glb", "put there by hand");
        ProfileBaker.Write(Rig, Delivered(), [CargoArm.Lift()], Profile("near"), folder[""], "arm");
        Assert.Equal(["arm.game.far.glb", "arm.game.json", "arm.game.near.glb", "arm.game.other.glb", "delivered.gltf"], folder.FileNames);
        ProfileBaker.Write(Rig, Delivered(), [CargoArm.Lift()], Profile(), folder[""], "arm");
        Assert.Equal(["arm.game.far.glb", "arm.game.glb", "arm.game.json", "arm.game.other.glb", "delivered.gltf"], folder.FileNames);
    }

    [Fact]
    public void The_delivered_file_is_not_written_over()
    {
        var path = folder.Write("arm.game.glb", DeliveredFile.Of(Rig).ToJsonString());
        var problem = Assert.Throws<BadInputException>(() => ProfileBaker.Write(Rig, path, [CargoArm.Lift()], new EngineProfile("game"), folder[""], "arm"));
        Assert.Contains("would write over the delivered file", problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false, false)]
    [InlineData(false, true)]
    [InlineData(true, false)]
    [InlineData(true, true)]
    public void A_clip_that_moves_only_what_a_level_leaves_out_stands_still_there(bool isAdditive, bool isAlone)
    {
        var flick = new Clip("flick", 1).Switch("hand_left.fk", 0, 1).TurnAbout("turn_wrist_left", Axis.X, (0, 0), (1, 40));
        var moved = Bake.Run(Rig, flick).Tracks.Select(track => Rig.Joints[track.Joint].Name).ToList();
        Assert.Contains("wrist_left", moved);
        Assert.DoesNotContain("holder", moved);
        var profile = new EngineProfile("game") { Additive = isAdditive ? AdditiveReference.Rest : null, Levels = [new DetailLevel("far") { LeavesOut = ["hook", .. moved] }] };
        ProfileBaker.Write(Rig, Delivered(), isAlone ? [flick] : [flick, new Clip("slide", 1).MoveAlong("world", Axis.X, (0, 0), (1, 1))], profile, folder[""], "arm");
        var animation = GltfFile.Read(folder["arm.game.far.glb"]).Model.LogicalAnimations.Single(animation => animation.Name == "flick");
        var channel = Assert.Single(animation.Channels);
        Assert.Equal("holder", channel.TargetNode.Name);
        var still = isAdditive ? Quaternion.Identity : Rig.Joints[0].RestRotation;
        Assert.All(channel.GetRotationSampler()!.GetLinearKeys(), key => Assert.Equal(1, Math.Abs(Quaternion.Dot(still, key.Value)), 1e-6));
    }

    [Fact]
    public void Without_events_there_are_none()
    {
        var (manifest, _) = ProfileBaker.Write(Rig, Delivered(), [CargoArm.Lift().Mark(1, "grip")], new EngineProfile("game") { Events = false }, folder[""]);
        Assert.Empty(manifest.Clips[0].Events);
        Assert.Null(GltfFile.Read(folder[manifest.Files[0].Name]).ParseJson()["animations"]![0]!["extras"]);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Additive_motion_on_its_reference_is_the_motion(bool isClipsOwn)
    {
        var profile = new EngineProfile("game") { Additive = isClipsOwn ? AdditiveReference.Time(0.5f) : AdditiveReference.Rest };
        var plain = Bake.Run(Rig, CargoArm.Lift());
        ProfileBaker.Write(Rig, Delivered(), [CargoArm.Lift()], profile, folder[""], "arm");
        var file = GltfFile.Read(folder["arm.game.glb"]).Model;
        var animation = file.LogicalAnimations[0];
        Assert.Equal(isClipsOwn ? "0.5 s" : "rest", animation.Extras!["additive"]!.GetValue<string>());
        foreach (var track in plain.Tracks.Where(track => track.Rotations is not null))
        {
            var joint = Rig.Joints[track.Joint];
            var (turns, moves) = (animation.FindRotationChannel(file.LogicalNodes[track.Joint])!.GetRotationSampler().CreateCurveSampler(), animation.FindTranslationChannel(file.LogicalNodes[track.Joint])?.GetTranslationSampler().CreateCurveSampler());
            var reference = isClipsOwn ? (track.Translations?[15] ?? joint.RestTranslation, track.Rotations![15]) : (joint.RestTranslation, joint.RestRotation);
            for (var frame = 0; frame < plain.Times.Count; frame++)
            {
                var turned = reference.Item2 * turns.GetPoint(plain.Times[frame]);
                Assert.InRange(Math.Abs(Quaternion.Dot(Quaternion.Normalize(turned), track.Rotations![frame])), 1 - 1e-5, 1 + 1e-5);
                if (track.Translations is { } translations)
                    Assert.InRange(Vector3.Distance(reference.Item1 + moves!.GetPoint(plain.Times[frame]), translations[frame]), 0, 1e-5f);
            }
        }
    }

    [Fact]
    public void Profiles_that_cant_be_are_told()
    {
        Assert.Contains("its name isn't made of letters", Refusal(new EngineProfile("a/b")), StringComparison.Ordinal);
        Assert.Contains("NaN of its units are a metre", Refusal(new EngineProfile("a") { UnitsPerMetre = float.NaN }), StringComparison.Ordinal);
        Assert.Contains("its up axis is X", Refusal(new EngineProfile("a") { Up = Axis.X }), StringComparison.Ordinal);
        Assert.Contains("leaves out 'elbow_left', which moves, and keeps 'wrist_left' under it", Refusal(new EngineProfile("a") { Levels = [new DetailLevel("far") { LeavesOut = ["elbow_left"] }] }), StringComparison.Ordinal);
        Assert.Contains("leaves out every joint", Refusal(new EngineProfile("a") { Levels = [new DetailLevel("far") { LeavesOut = ["*"] }] }), StringComparison.Ordinal);
        Assert.Contains("its additive reference at 7 s lies outside the clip", Refusal(new EngineProfile("a") { Additive = AdditiveReference.Time(7) }), StringComparison.Ordinal);
        Assert.Equal(["delivered.gltf"], folder.FileNames);
    }

    private string Refusal(EngineProfile profile) => Assert.Throws<BadInputException>(() => ProfileBaker.Write(Rig, Delivered(), [CargoArm.Lift()], profile, folder[""])).Message;

    private List<string?> Moved(string file)
    {
        var model = GltfFile.Read(folder[file]).Model;
        return [.. model.LogicalAnimations[0].Channels.Select(channel => channel.TargetNode.Name)];
    }

    private static Vector3 Place(double[] world) => new((float)world[12], (float)world[13], (float)world[14]);

    private string Delivered() => folder.Write("delivered.gltf", DeliveredFile.Of(Rig).ToJsonString());
}
