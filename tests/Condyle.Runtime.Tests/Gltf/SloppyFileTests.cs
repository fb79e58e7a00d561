using System.Text.Json.Nodes;
using Condyle.Runtime.Gltf;

namespace Condyle.Runtime.Tests.Gltf;

/// <summary>Files as exporters write them: not quite by the standard, and still clear about where their joints are.</summary>
public sealed class SloppyFileTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Empty_lists_and_nulls_count_as_nothing()
    {
        var file = Read("""{"asset":{"version":"2.0"},"animations":[],"extensionsUsed":[],"nodes":[{"name":null,"children":[]},{"name":"mast","extras":null}]}""");
        Assert.Null(file.Remark);
        Assert.Equal(["node_0", "mast"], GltfSkeleton.Read(file).Joints.Select(joint => joint.Name));
    }

    [Fact]
    public void Bounds_that_are_not_the_datas_are_remarked_and_stay()
    {
        var file = Changed(json => json["accessors"]![0]!["max"]![0] = 0.125);
        Assert.Contains("out of bounds", file.Remark, StringComparison.Ordinal);
        file.Write(folder["out.glb"]);
        Assert.Equal(0.125, GltfFile.Read(folder["out.glb"]).ParseJson()["accessors"]![0]!["max"]![0]!.GetValue<double>());
    }

    [Fact]
    public void Joints_without_a_common_root_are_remarked()
    {
        var file = Changed(json =>
        {
            json["skins"]![1]!["joints"]![1] = SampleFile.Eye;
            json["nodes"]![SampleFile.Pelvis]!["children"]!.AsArray().RemoveAt(2);
            json["scenes"]![0]!["nodes"]!.AsArray().Add(SampleFile.Eye);
        });
        Assert.Equal("the joints of a skin have no common root", file.Remark);
        Assert.Contains(GltfSkeleton.Read(file).Joints, joint => joint is { Name: "eye", Parent: -1 });
    }

    [Theory]
    [InlineData("KHR_draco_mesh_compression")]
    [InlineData("EXT_texture_webp")]
    [InlineData("KHR_materials_unlit")]
    public void Extensions_that_say_how_meshes_and_pictures_are_stored_stop_nobody(string extension)
    {
        var file = Changed(json =>
        {
            json["extensionsUsed"] = new JsonArray(extension);
            json["extensionsRequired"] = new JsonArray(extension);
        });
        Assert.Equal([extension], file.ParseJson()["extensionsRequired"]!.AsArray().Select(name => name!.GetValue<string>()));
    }

    [Fact]
    public void A_buffer_that_an_extension_has_packed_is_told_as_such()
    {
        var path = folder.Write("packed.gltf", """{"asset":{"version":"2.0"},"buffers":[{"byteLength":8,"extensions":{"EXT_meshopt_compression":{"fallback":true}}}]}""");
        Assert.Contains("Unpack the file first", Assert.Throws<BadInputException>(() => GltfFile.Read(path)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Bytes_after_the_end_of_a_glb_are_no_content() =>
        Assert.Equal(11, GltfFile.Read(folder.Write("padded.glb", [.. SampleFile.Glb(), 0, 0, 0])).Model.LogicalNodes.Count);

    [Fact]
    public void An_empty_file_is_called_empty() =>
        Assert.Contains("the file is empty", Assert.Throws<BadInputException>(() => GltfFile.Read(folder.Write("empty.glb", Array.Empty<byte>()))).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("""{"matrix":[0.8,0.6,0,0, -0.6,0.8,0,0, 0,0,1,0, 1,2,3,1]}""", true)]
    [InlineData("""{"matrix":[0.839,0.545,0,0, -0.545,0.839,0,0, 0,0,1,0, 1,2,3,1]}""", true)]
    [InlineData("""{"matrix":[0.839,0.545,0.001,0, -0.545,0.839,0,0, 0,0,1,0, 1,2,3,0.99999994]}""", false)]
    [InlineData("""{"rotation":[0,0,0.6,0.8]}""", true)]
    [InlineData("""{"rotation":[0,0,0.6,0.8001]}""", false)]
    public void What_was_rounded_is_read_and_known_as_inexact(string members, bool isExact) =>
        Assert.Equal(isExact, Assert.Single(GltfSkeleton.Read(Read($$"""{"asset":{"version":"2.0"},"nodes":[{{members}}]}""")).Joints).IsExact);

    private GltfFile Read(string json) => GltfFile.Read(folder.Write("sloppy.gltf", json));

    private GltfFile Changed(Action<JsonObject> change)
    {
        var json = JsonNode.Parse(SampleFile.GltfWithDataUri())!.AsObject();
        change(json);
        return Read(json.ToJsonString());
    }
}
