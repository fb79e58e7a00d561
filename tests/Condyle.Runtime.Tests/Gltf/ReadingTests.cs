using Condyle.Runtime.Gltf;

namespace Condyle.Runtime.Tests.Gltf;

public sealed class ReadingTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_glb_a_data_uri_and_a_file_below_the_folder_read_the_same()
    {
        var glb = GltfFile.Read(folder.Write("leg.glb", SampleFile.Glb()));
        var dataUri = GltfFile.Read(folder.Write("leg.gltf", SampleFile.GltfWithDataUri()));
        var text = SampleFile.GltfWithFile("parts/the%20leg.bin", out var content);
        folder.Write("parts/the leg.bin", content);
        var external = GltfFile.Read(folder.Write("outer.gltf", text));

        Assert.Equal(glb.Buffers[0].Bytes.ToArray(), dataUri.Buffers[0].Bytes.ToArray());
        Assert.Equal(glb.Buffers[0].Bytes.ToArray(), external.Buffers[0].Bytes.ToArray());
        Assert.Equal(11, external.Model.LogicalNodes.Count);
    }

    [Fact]
    public void A_byte_order_mark_is_passed_over() =>
        Assert.Single(GltfFile.Read(folder.Write("a.gltf", """﻿{"asset":{"version":"2.0"},"nodes":[{"name":"pelvis"}]}""")).Model.LogicalNodes);

    [Fact]
    public void A_missing_file_is_named()
    {
        var problem = Assert.Throws<BadInputException>(() => GltfFile.Read(folder["nobody.glb"]));
        Assert.Equal(folder["nobody.glb"], problem.File);
        Assert.Contains("isn't there", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_in_place_of_a_file_is_refused() => Assert.Throws<BadInputException>(() => GltfFile.Read(folder["."]));

    [Fact]
    public void Malformed_JSON_is_placed_by_line_and_column()
    {
        var problem = Refused("{\n  \"asset\": { \"version\": \"2.0\" },\n  \"nodes\": [ { \"translation\": [NaN, 0, 0] } ]\n}");
        Assert.Equal("line 3, column 32", problem.Place);
    }

    [Theory]
    [InlineData("""{"rotation":[0,0,0,0]}""", "/nodes/1/rotation", "zero quaternion")]
    [InlineData("""{"rotation":[0,0,0,2]}""", "/nodes/1/rotation", "length 2")]
    [InlineData("""{"translation":[0,1e999,0]}""", "/nodes/1/translation/1", "finite")]
    [InlineData("""{"translation":[0,1]}""", "/nodes/1/translation", "2 numbers")]
    [InlineData("""{"scale":"big"}""", "/nodes/1/scale", "list")]
    [InlineData("""{"matrix":[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],"scale":[1,1,1]}""", "/nodes/1/matrix", "beside")]
    [InlineData("""{"children":[7]}""", "/nodes/1/children/0", "index 7")]
    [InlineData("""{"children":[0]}""", "/nodes/0", "own ancestor")]
    [InlineData("""{"children":[1]}""", "/nodes/1/children/0", "child of")]
    [InlineData("""{"mesh":0}""", "/nodes/1/mesh", "0 meshes")]
    [InlineData("""{"skin":-1}""", "/nodes/1/skin", "index -1")]
    [InlineData("""{"camera":0.5}""", "/nodes/1/camera", "index 0.5")]
    public void A_broken_node_is_named_with_its_place(string members, string place, string words)
    {
        var node = "{\"name\":\"elbow_left\"," + members[1..];
        var problem = Refused($$"""{"asset":{"version":"2.0"},"nodes":[{"name":"shoulder_left","children":[1]},{{node}}]}""");
        Assert.Equal(place, problem.Place);
        Assert.Equal(place.StartsWith("/nodes/1", StringComparison.Ordinal) ? "elbow_left" : "shoulder_left", problem.Node);
        Assert.Contains(words, problem.Message, StringComparison.Ordinal);
        Assert.Contains(problem.Node!, problem.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', problem.Message);
    }

    [Theory]
    [InlineData("""{"asset":{"version":"1.0"}}""", "/asset/version")]
    [InlineData("""{"asset":{"version":2.0}}""", "/asset/version")]
    [InlineData("""{"nodes":[]}""", "/asset")]
    [InlineData("""[1, 2]""", null)]
    [InlineData("""{"asset":{"version":"2.0"},"nodes":{}}""", "/nodes")]
    [InlineData("""{"asset":{"version":"2.0"},"nodes":[null]}""", "/nodes/0")]
    [InlineData("""{"asset":{"version":"2.0"},"nodes":[{"name":"\ud800"}]}""", "/nodes/0/name")]
    [InlineData("""{"asset":{"version":"2.0"},"nodes":[{}],"skins":[{"joints":[]}]}""", "/skins/0")]
    [InlineData("""{"asset":{"version":"2.0"},"nodes":[{}],"skins":[{"joints":[1]}]}""", "/skins/0/joints/0")]
    [InlineData("""{"asset":{"version":"2.0"},"nodes":[{}],"skins":[{"joints":[0],"inverseBindMatrices":3}]}""", "/skins/0/inverseBindMatrices")]
    [InlineData("""{"asset":{"version":"2.0"},"scene":1,"scenes":[{}]}""", "/scene")]
    [InlineData("""{"asset":{"version":"2.0"},"scenes":[{"nodes":[0]}]}""", "/scenes/0/nodes/0")]
    [InlineData("""{"asset":{"version":"2.0"},"buffers":[{"byteLength":4}]}""", "/buffers/0")]
    [InlineData("""{"asset":{"version":"2.0"},"buffers":[{"byteLength":4,"uri":"data:;base64,AAA="}]}""", "/buffers/0/byteLength")]
    [InlineData("""{"asset":{"version":"2.0"},"buffers":[{"byteLength":4,"uri":"data:;base64,A*A="}]}""", "/buffers/0/uri")]
    [InlineData("""{"asset":{"version":"2.0"},"buffers":[{"byteLength":2147483647,"uri":"data:;base64,AAAA"}]}""", "/buffers/0/byteLength")]
    [InlineData("""{"asset":{"version":"2.0"},"accessors":[{"componentType":5126,"type":"VEC4","count":2000000000}]}""", "/accessors/0/count")]
    [InlineData("""{"asset":{"version":"2.0"},"accessors":[{"componentType":5126,"type":"VEC9","count":2}]}""", "/accessors/0/type")]
    [InlineData("""{"asset":{"version":"2.0"},"materials":[{"alphaMode":"FOO"}]}""", null)]
    [InlineData("""{"asset":{"version":"2.0"},"extensionsUsed":["NONE_such"],"extensionsRequired":["NONE_such"]}""", null)]
    [InlineData("""{"asset":{"version":"2.0","version":"2.0"}}""", null)]
    public void A_broken_file_is_refused_with_its_place(string json, string? place) => Assert.Equal(place, Refused(json).Place);

    [Theory]
    [InlineData("""{"buffer":0,"byteOffset":12,"byteLength":8}""", """{"bufferView":0,"componentType":5126,"type":"SCALAR","count":1}""", "/bufferViews/0")]
    [InlineData("""{"buffer":1,"byteLength":8}""", """{"bufferView":0,"componentType":5126,"type":"SCALAR","count":1}""", "/bufferViews/0/buffer")]
    [InlineData("""{"buffer":0,"byteLength":16}""", """{"bufferView":0,"componentType":5126,"type":"VEC3","count":2}""", "/accessors/0")]
    [InlineData("""{"buffer":0,"byteLength":16}""", """{"bufferView":0,"componentType":5126,"type":"SCALAR","count":2000000000}""", "/accessors/0")]
    [InlineData("""{"buffer":0,"byteLength":16}""", """{"bufferView":0,"componentType":5126,"type":"SCALAR","count":4}""", "/accessors/0")]
    [InlineData("""{"buffer":0,"byteLength":16}""", """{"bufferView":0,"componentType":5126,"type":"SCALAR","count":1,"sparse":{"count":2}}""", "/accessors/0/sparse/count")]
    public void A_view_or_accessor_that_lies_is_refused_with_its_place(string view, string accessor, string place)
    {
        // The last of the four floats is a NaN.
        var data = Convert.ToBase64String([0, 0, 128, 63, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 192, 127]);
        var json = $$"""{"asset":{"version":"2.0"},"buffers":[{"byteLength":16,"uri":"data:;base64,{{data}}"}],"bufferViews":[{{view}}],"accessors":[{{accessor}}]}""";
        Assert.Equal(place, Refused(json).Place);
    }

    [Theory]
    [InlineData("../secret.bin")]
    [InlineData("%2e%2e/secret.bin")]
    [InlineData("parts/../../secret.bin")]
    [InlineData("..\\\\secret.bin")]
    [InlineData("/etc/hostname")]
    [InlineData("file:///etc/hostname")]
    [InlineData("https://example.com/leg.bin")]
    [InlineData("nul%00l.bin")]
    public void A_buffer_outside_the_folder_is_refused(string uri)
    {
        folder.Write("secret.bin", new byte[64]);
        var path = folder.Write("inner/leg.gltf", $$"""{"asset":{"version":"2.0"},"buffers":[{"byteLength":4,"uri":"{{uri}}"}]}""");
        Assert.Equal("/buffers/0/uri", Assert.Throws<BadInputException>(() => GltfFile.Read(path)).Place);
    }

    [Fact]
    public void A_buffer_file_that_is_missing_or_too_short_is_refused()
    {
        const string Json = """{"asset":{"version":"2.0"},"buffers":[{"byteLength":1000000000,"uri":"leg.bin"}]}""";
        Assert.Contains("isn't there", Refused(Json).Message, StringComparison.Ordinal);
        folder.Write("leg.bin", new byte[10]);
        Assert.Contains("has 10 bytes", Refused(Json).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_image_file_that_is_missing_is_refused() =>
        Assert.Equal("/images/0/uri", Refused("""{"asset":{"version":"2.0"},"images":[{"uri":"skin.png"}]}""").Place);

    [Theory]
    [InlineData(1000, true)]
    [InlineData(1001, false)]
    [InlineData(100_000, false)]
    public void A_hierarchy_is_read_to_a_depth_of_a_thousand_and_refused_beyond(int depth, bool isRead)
    {
        var nodes = string.Join(",", Enumerable.Range(1, depth).Select(next => next < depth ? $$"""{"children":[{{next}}]}""" : "{}"));
        var json = $$"""{"asset":{"version":"2.0"},"nodes":[{{nodes}}]}""";
        if (isRead)
            Assert.Equal(depth, GltfSkeleton.Read(GltfFile.Read(folder.Write("deep.gltf", json))).Joints.Count);
        else
            Assert.Equal("/nodes/1000", Refused(json).Place);
    }

    private BadInputException Refused(string json)
    {
        var path = folder.Write("broken.gltf", json);
        var problem = Assert.Throws<BadInputException>(() => GltfFile.Read(path));
        Assert.Equal(path, problem.File);
        return problem;
    }
}
