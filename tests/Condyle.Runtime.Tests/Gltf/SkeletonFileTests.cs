using System.Text.Json.Nodes;
using Condyle.Runtime.Gltf;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Gltf;

public sealed class SkeletonFileTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_skeleton_file_has_the_same_joints_as_the_file_it_came_from()
    {
        var delivered = GltfSkeleton.Read(Sample());
        var extracted = GltfSkeleton.Read(GltfFile.Read(Extracted()));
        Assert.Equal(delivered.Joints, extracted.Joints);
        Assert.Equal(delivered.Skins.Select(skin => skin.Joints), extracted.Skins.Select(skin => skin.Joints));
    }

    [Fact]
    public void It_holds_nodes_scenes_and_skins_only_and_remembers_what_a_node_carried()
    {
        var json = JsonNode.Parse(File.ReadAllText(Extracted()))!.AsObject();
        Assert.Equal(["asset", "scene", "scenes", "nodes", "skins"], json.Select(member => member.Key));
        var nodes = json["nodes"]!;
        Assert.Equal("mesh", (string?)nodes[SampleFile.Body]!["extras"]![SkeletonFile.CarriesMember]);
        Assert.Equal("mesh", (string?)nodes[SampleFile.Lamp]!["extras"]![SkeletonFile.CarriesMember]);
        Assert.Equal("camera", (string?)nodes[SampleFile.Eye]!["extras"]![SkeletonFile.CarriesMember]);
        Assert.Equal("dôck", (string?)nodes[SampleFile.Pelvis]!["extras"]!["team"]);
        Assert.Null(nodes[SampleFile.Pelvis]!["extras"]![SkeletonFile.CarriesMember]);
        Assert.All(nodes.AsArray(), node => Assert.False(node!["mesh"] is not null || node["skin"] is not null || node["camera"] is not null));
        Assert.All(json["skins"]!.AsArray(), skin => Assert.Null(skin!["inverseBindMatrices"]));
    }

    [Fact]
    public void It_remembers_which_nodes_are_humanoid_bones()
    {
        var delivered = GltfFile.Read(folder.Write("human.gltf", """
            {
              "asset": { "version": "2.0" }, "extensionsUsed": ["VRMC_vrm"],
              "nodes": [ { "name": "J_01", "extras": { "team": 3 }, "children": [1] }, { "name": "J_17" } ],
              "extensions": { "VRMC_vrm": { "specVersion": "1.0", "humanoid": { "humanBones": { "hips": { "node": 0 }, "leftUpperArm": { "node": 1 } } } } }
            }
            """));
        var extracted = GltfFile.Read(folder.Write("skeleton.gltf", SkeletonFile.Extract(delivered)));
        Assert.Equal(GltfSkeleton.Read(delivered).HumanBones, GltfSkeleton.Read(extracted).HumanBones);
        Assert.Equal("""{"team":3,"condyleHumanBone":"hips"}""", extracted.ParseJson()["nodes"]![0]!["extras"]!.ToJsonString());
    }

    /// <summary>Against gltf-validator, the validator of the glTF 2.0 standard.</summary>
    [SkippableFact]
    public void It_is_valid_to_the_standards_validator()
    {
        var report = OutsideChecks.Validate(Extracted());
        Assert.True(report is { Errors: 0, Warnings: 0 }, string.Join("\n", report.Messages));
    }

    private GltfFile Sample() => GltfFile.Read(folder.Write("leg.glb", SampleFile.Glb()));

    private string Extracted() => folder.Write("skeleton.gltf", SkeletonFile.Extract(Sample()));
}
