using System.Globalization;
using System.Numerics;
using System.Text.Json;
using System.Text.Json.Nodes;
using Condyle.Runtime.Gltf;
using Condyle.Runtime.Tests.Evaluation;
using Condyle.Runtime.Tests.Gltf;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Baking;

/// <summary>Morph targets that a rig sets are baked as the weights of the nodes that show their mesh.</summary>
public sealed class MorphTests : IDisposable
{
    private static readonly CompiledRig Rig = DefinedRig.Compile(rig =>
    {
        var joint = rig.Skeleton("docker").Root("head");
        var nod = rig.Control("nod").PlacedAt(joint);
        rig.Drive(joint).ByChannels(nod);
        rig.Response(nod.Dial("grin", 0, 1)).Key(0, 0).Key(1, 0.8f).OntoMorph("face", "grin").OntoMorph("face", "2");
    });

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Every_node_that_shows_the_mesh_gets_all_its_weights_at_each_time()
    {
        RigBaker.Run(Rig, Delivered(), [Grin], folder["out.glb"], new BakeSettings { FramesPerSecond = 4 });
        var animation = GltfFile.Read(folder["out.glb"]).Model.LogicalAnimations.Single();
        var tracks = animation.Channels.Where(channel => channel.TargetNodePath == SharpGLTF.Schema2.PropertyPath.weights).ToList();
        Assert.Equal([1, 2], tracks.Select(track => track.TargetNode.LogicalIndex));
        // The mesh has the first target, a rest of the second, and the rig the others.
        Assert.All(tracks, track => Assert.Equal(
            [(0f, "0 0.25 0"), (0.25f, "0.2 0.25 0.2"), (0.5f, "0.4 0.25 0.4"), (0.75f, "0.6 0.25 0.6"), (1f, "0.8 0.25 0.8")],
            track.GetMorphSampler().GetLinearKeys().Select(key => (key.Key, string.Join(' ', key.Value.Select(weight => weight.ToString("0.####", CultureInfo.InvariantCulture)))))));
    }

    [Fact]
    public void A_mesh_that_stays_at_rest_gets_no_track()
    {
        RigBaker.Run(Rig, Delivered(), [new Clip("nod", 1).TurnAbout("nod", Axis.X, (0, 0), (1, 20))], folder["out.glb"]);
        Assert.DoesNotContain(GltfFile.Read(folder["out.glb"]).Model.LogicalAnimations.Single().Channels, channel => channel.TargetNodePath == SharpGLTF.Schema2.PropertyPath.weights);
    }

    /// <summary>Against three.js in Node.js, and against gltf-validator, the validator of the standard.</summary>
    [SkippableFact]
    public void An_independent_library_plays_the_weights_of_the_live_rig()
    {
        RigBaker.Run(Rig, Delivered(), [Grin], folder["out.glb"]);
        var report = OutsideChecks.Validate(folder["out.glb"]);
        Assert.True(report is { Errors: 0 }, string.Join(Environment.NewLine, report.Messages));
        double[] times = [0, 0.1, 0.37, 0.5, 0.99];
        var played = JsonSerializer.Deserialize<double[][][]>(OutsideChecks.Run("morphs.mjs", JsonSerializer.Serialize(new { times }), folder["out.glb"], Grin.Name))!;
        var (live, player) = (Rig.NewInstance(), new ClipPlayer(Rig, Grin));
        foreach (var (time, meshes) in times.Zip(played))
        {
            player.Pose(live, (float)time);
            live.Evaluate();
            Assert.Equal(2, meshes.Length);
            Assert.All(meshes, weights =>
            {
                Assert.Equal(live.MorphWeight(Rig.MorphIndex("face.grin")), weights[0], 5);
                Assert.Equal(0.25, weights[1], 5);
                Assert.Equal(live.MorphWeight(Rig.MorphIndex("face.2")), weights[2], 5);
            });
        }
    }

    [Theory]
    [InlineData("fase", "grin", "the rig 'DefinedRig' sets 'grin' of mesh 'face', and the file has no mesh 'face' (nearest: 'fase'), so that motion would be lost. Name the file that holds the mesh, or respond onto a morph target that it has.")]
    [InlineData("face", "gryn", "the rig 'DefinedRig' sets 'grin' of mesh 'face', and the file has no morph target 'grin' of mesh 'face' (nearest: 'gryn', 'frown'), so that motion would be lost. Name the file that holds the mesh, or respond onto a morph target that it has.")]
    public void A_target_that_the_file_lacks_is_told(string mesh, string target, string message)
    {
        var refused = Assert.Throws<BadInputException>(() => RigBaker.Run(Rig, Delivered(mesh, target), [Grin], folder["out.glb"]));
        Assert.EndsWith(message, refused.Message, StringComparison.Ordinal);
        Assert.False(File.Exists(folder["out.glb"]));
    }

    [Fact]
    public void A_mesh_that_no_node_shows_is_told()
    {
        var file = JsonNode.Parse(File.ReadAllText(Delivered()))!;
        foreach (var node in file["nodes"]!.AsArray())
            node!.AsObject().Remove("mesh");
        var refused = Assert.Throws<BadInputException>(() => RigBaker.Run(Rig, folder.Write("hidden.gltf", file.ToJsonString()), [Grin], folder["out.glb"]));
        Assert.Contains("the file has no node that shows mesh 'face', so that motion would be lost", refused.Message, StringComparison.Ordinal);
    }

    private static Clip Grin => new Clip("grin", 1).Dial("nod.grin", (0, 0), (1, 1));

    private string Delivered(string mesh = "face", string target = "grin")
    {
        var data = new byte[3 * 12 * 4];
        for (var i = 0; i < data.Length / 4; i++)
            BitConverter.TryWriteBytes(data.AsSpan(i * 4), (float)(i % 5));
        var file = DeliveredFile.Of(Rig);
        file.Remove("skins");
        file["nodes"]!.AsArray().Add(new JsonObject { ["name"] = "shown", ["mesh"] = 0 });
        file["nodes"]!.AsArray().Add(new JsonObject { ["name"] = "shown_again", ["mesh"] = 0 });
        file["scenes"]![0]!["nodes"] = new JsonArray(0, 1, 2);
        file["buffers"] = new JsonArray(new JsonObject { ["byteLength"] = data.Length, ["uri"] = "data:application/octet-stream;base64," + Convert.ToBase64String(data) });
        file["bufferViews"] = new JsonArray(new JsonObject { ["buffer"] = 0, ["byteLength"] = data.Length, ["byteStride"] = 12, ["target"] = 34962 });
        file["accessors"] = new JsonArray([.. Enumerable.Range(0, 4).Select(index => Accessor(data, index))]);
        file["meshes"] = new JsonArray(new JsonObject
        {
            ["name"] = mesh,
            ["weights"] = new JsonArray(0, 0.25, 0),
            ["extras"] = new JsonObject { ["targetNames"] = new JsonArray(target, "frown") },
            ["primitives"] = new JsonArray(new JsonObject
            {
                ["attributes"] = new JsonObject { ["POSITION"] = 0 },
                ["targets"] = new JsonArray([.. Enumerable.Range(1, 3).Select(index => new JsonObject { ["POSITION"] = index })]),
            }),
        });
        return folder.Write("delivered.gltf", file.ToJsonString());
    }

    private static JsonObject Accessor(byte[] data, int index)
    {
        var points = Enumerable.Range(index * 3, 3).Select(point => new Vector3(BitConverter.ToSingle(data, point * 12), BitConverter.ToSingle(data, (point * 12) + 4), BitConverter.ToSingle(data, (point * 12) + 8))).ToList();
        var (least, most) = (points.Aggregate(Vector3.Min), points.Aggregate(Vector3.Max));
        return new JsonObject
        {
            ["bufferView"] = 0,
            ["byteOffset"] = index * 36,
            ["componentType"] = 5126,
            ["count"] = 3,
            ["type"] = "VEC3",
            ["min"] = new JsonArray((double)least.X, (double)least.Y, (double)least.Z),
            ["max"] = new JsonArray((double)most.X, (double)most.Y, (double)most.Z),
        };
    }
}
