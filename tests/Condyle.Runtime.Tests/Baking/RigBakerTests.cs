using System.Numerics;
using System.Text.Json.Nodes;
using Condyle.Runtime.Gltf;
using Condyle.Runtime.Tests.Gltf;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Baking;

public sealed class RigBakerTests : IDisposable
{
    private static readonly CompiledRig Rig = CargoArm.Compiled();
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    /// <summary>Against a playback that reads the written bytes, straight from the text of the glTF 2.0 specification.</summary>
    [Theory]
    [InlineData(false, "out.glb")]
    [InlineData(true, "out.glb")]
    [InlineData(false, "out.gltf")]
    public void The_written_file_plays_back_to_the_live_rig(bool asMatrices, string name)
    {
        var clip = CargoArm.Lift();
        var result = RigBaker.Run(Rig, Delivered(asMatrices: asMatrices), [RangeOfMotion.Of(Rig), clip], folder[name]);
        Assert.True(result.Holds);
        Assert.Equal(new FileInfo(folder[name]).Length, result.Bytes);
        Assert.InRange(result.Rest.Largest.Metres.Value, 0, 1e-5);
        Assert.Empty(result.Rest.Moved);

        var (playback, live, player) = (DoublePlayback.Open(folder[name]), Rig.NewInstance(), new ClipPlayer(Rig, clip));
        foreach (var time in Bake.Run(Rig, clip).Times)
        {
            player.Pose(live, time);
            live.Evaluate();
            var worlds = playback.World(clip.Name, time);
            foreach (var joint in Rig.Joints)
                Near.AssertEqual(worlds[joint.Index], live.JointWorld(joint.Index), 2e-5);
        }
    }

    /// <summary>Against gltf-validator, the validator of the standard.</summary>
    [SkippableFact]
    public void The_written_file_is_valid()
    {
        RigBaker.Run(Rig, Delivered(), [RangeOfMotion.Of(Rig), CargoArm.Lift()], folder["out.glb"]);
        var report = OutsideChecks.Validate(folder["out.glb"]);
        Assert.True(report is { Errors: 0, Warnings: 0 }, string.Join(Environment.NewLine, report.Messages));
    }

    /// <summary>Against three.js in Node.js.</summary>
    [SkippableFact]
    public void An_independent_library_plays_the_file_to_the_live_rig()
    {
        var clip = CargoArm.Lift();
        RigBaker.Run(Rig, Delivered(), [clip], folder["out.glb"]);
        var times = Bake.Run(Rig, clip).Times;
        var played = OutsideChecks.Play(folder["out.glb"], clip.Name, times.Select(time => (double)time), Rig.Joints.Select(joint => joint.Index));
        var (live, player) = (Rig.NewInstance(), new ClipPlayer(Rig, clip));
        for (var frame = 0; frame < times.Count; frame++)
        {
            player.Pose(live, times[frame]);
            live.Evaluate();
            foreach (var joint in Rig.Joints)
                Near.AssertEqual(played[frame][joint.Index], live.JointWorld(joint.Index), 2e-5);
        }
    }

    [Fact]
    public void Delivered_clips_stay_and_one_of_the_same_name_is_only_replaced_when_asked()
    {
        RigBaker.Run(Rig, Delivered(), [CargoArm.Lift()], folder["first.gltf"]);
        RigBaker.Run(Rig, folder["first.gltf"], [RangeOfMotion.Of(Rig)], folder["second.gltf"]);
        Assert.Equal(["lift_crate", "range_of_motion"], GltfFile.Read(folder["second.gltf"]).Model.LogicalAnimations.Select(clip => clip.Name));
        Assert.Contains("the file has an animation 'lift_crate' already", Problem(() => RigBaker.Run(Rig, folder["first.gltf"], [CargoArm.Lift()], folder["third.gltf"])), StringComparison.Ordinal);
        RigBaker.Run(Rig, folder["first.gltf"], [CargoArm.Lift()], folder["third.gltf"], new BakeSettings { ReplaceClips = true });
        Assert.Equal(["lift_crate"], GltfFile.Read(folder["third.gltf"]).Model.LogicalAnimations.Select(clip => clip.Name));
    }

    [Fact]
    public void Missing_joints_are_told_on_both_sides_with_the_nearest_names()
    {
        var file = Delivered(json => Node(json, "elbow_left")["name"] = "elbow_l");
        Assert.Equal(
            $"{file}: 1 joint of the rig 'CargoArm' isn't in the file: 'elbow_left' (nearest: 'elbow_l'); 1 joint of the file isn't in the rig: 'elbow_l'. Build the rig on this file's skeleton, or name the file that it was built on.",
            Refusal(file));
    }

    [Fact]
    public void Joints_of_the_file_that_the_rig_leaves_out_keep_their_rest()
    {
        var file = Delivered(json =>
        {
            json["nodes"]!.AsArray().Add(new JsonObject { ["name"] = "lamp", ["translation"] = new JsonArray(0, 0.2, 0) });
            Node(json, "hook")["children"] = new JsonArray(Rig.Joints.Count);
        });
        Assert.Equal(["lamp"], RigBaker.Run(Rig, file, [CargoArm.Lift()], folder["out.glb"]).JointsNotInRig);
    }

    [Fact]
    public void A_joint_that_rests_elsewhere_is_told_with_the_distance()
    {
        var file = Delivered(json => Node(json, "wrist_left")["translation"]![1] = 0.06);
        Assert.Equal($"{file}: 'wrist_left' at /nodes/5 rests elsewhere in the file than in the rig: 10 mm apart. Build the rig on this file's skeleton, or name the file that it was built on.", Refusal(file));
    }

    [Fact]
    public void A_joint_that_hangs_elsewhere_is_told()
    {
        var file = Delivered(json =>
        {
            Node(json, "wrist_left").AsObject().Remove("children");
            Node(json, "elbow_left")["children"]!.AsArray().Add(6);
        });
        Assert.Contains("'hook' at /nodes/6 hangs under 'elbow_left' in the file and under 'wrist_left' in the rig", Refusal(file), StringComparison.Ordinal);
    }

    [Fact]
    public void A_placed_node_above_the_rigs_root_is_told()
    {
        JsonObject? above = null;
        var still = Delivered(json =>
        {
            json["nodes"]!.AsArray().Add(above = new JsonObject { ["name"] = "scene", ["children"] = new JsonArray(0) });
            json["scenes"]![0]!["nodes"] = new JsonArray(Rig.Joints.Count);
        });
        Assert.Equal(["scene"], RigBaker.Run(Rig, still, [CargoArm.Lift()], folder["out.glb"]).JointsNotInRig);
        above!["scale"] = new JsonArray(0.01, 0.01, 0.01);
        var scaled = folder.Write("scaled.gltf", above.Root.ToJsonString());
        Assert.Contains("'holder' at /nodes/0 hangs under 'scene' in the file, which is placed, turned or scaled and isn't in the rig", Refusal(scaled), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_isnt_there_and_the_delivered_file_as_output_are_refused()
    {
        Assert.StartsWith(folder["no.glb"], Refusal(folder["no.glb"]), StringComparison.Ordinal);
        var delivered = Delivered();
        var before = File.ReadAllBytes(delivered);
        Assert.Contains("the output is the delivered file itself", Problem(() => RigBaker.Run(Rig, delivered, [CargoArm.Lift()], delivered)), StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(delivered));
    }

    [Fact]
    public void A_stopped_bake_writes_nothing()
    {
        var delivered = Delivered();
        Assert.Throws<OperationCanceledException>(() => RigBaker.Run(Rig, delivered, [CargoArm.Lift()], folder["out.glb"], cancellation: new CancellationToken(canceled: true)));
        Assert.Equal(["delivered.gltf"], folder.FileNames);
    }

    [Fact]
    public void A_rig_that_leaves_its_rest_is_told_by_joint()
    {
        var rig = RigCompiler.Compile(Condyle.Rig.Build(new Tiller()));
        var baker = RigBaker.Prepare(rig, folder.Write("tiller.gltf", DeliveredFile.Of(rig).ToJsonString()), [new Clip("c", 1).Move("helm", at: 0)]);
        Assert.Equal(["blade", "tip"], baker.Rest.Moved);
        Assert.Equal(0.5, baker.Rest.Largest.Metres.Value, 1e-6);
    }

    private string Refusal(string file)
    {
        var before = folder.FileNames;
        var message = Problem(() => RigBaker.Run(Rig, file, [CargoArm.Lift()], folder["refused.glb"]));
        Assert.Equal(before, folder.FileNames);
        return message;
    }

    private static string Problem(Action bake) => Assert.Throws<BadInputException>(bake).Message;

    private static JsonNode Node(JsonObject json, string name) => json["nodes"]!.AsArray().Single(node => node!["name"]!.GetValue<string>() == name)!;

    private string Delivered(Action<JsonObject>? change = null, bool asMatrices = false)
    {
        var json = DeliveredFile.Of(Rig, asMatrices);
        change?.Invoke(json);
        return folder.Write("delivered.gltf", json.ToJsonString());
    }

    /// <summary>Its blade lands on a control that doesn't stand where the blade rests.</summary>
    private sealed class Tiller : IRigDefinition
    {
        public void Define(RigDraft rig)
        {
            var blade = rig.Skeleton("tiller").Root("stern").Child("blade", at: new Vector3(0, 0.5f, 0));
            blade.Child("tip", at: Vector3.UnitZ);
            rig.Drive(blade).ByChannels(rig.Control("helm"));
        }
    }
}
