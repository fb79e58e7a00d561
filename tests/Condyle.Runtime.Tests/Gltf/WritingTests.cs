using Condyle.Runtime.Gltf;
using Condyle.Runtime.Gltf.Writing;

namespace Condyle.Runtime.Tests.Gltf;

public sealed class WritingTests : IDisposable
{
    /// <summary>The smallest picture: one transparent pixel as PNG.</summary>
    private static readonly byte[] Pixel = Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==");

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void An_unchanged_glb_keeps_its_data_and_its_JSON_values()
    {
        var source = GltfFile.Read(folder.Write("leg.glb", SampleFile.Glb()));
        source.Write(folder["copy.glb"]);
        var copy = GltfFile.Read(folder["copy.glb"]);
        Assert.Equal(source.ParseJson().ToJsonString(), copy.ParseJson().ToJsonString());
        Assert.Equal(source.Buffers[0].Bytes.ToArray(), copy.Buffers[0].Bytes.ToArray());
    }

    [Fact]
    public void Buffers_and_image_files_become_one_binary_chunk_in_a_glb()
    {
        var source = Textured("source/quay.gltf");
        source.Write(folder["out/quay.glb"]);
        var written = GltfFile.Read(folder["out/quay.glb"]);

        var json = written.ParseJson();
        Assert.Null(Assert.Single(json["buffers"]!.AsArray())!["uri"]);
        Assert.All(json["bufferViews"]!.AsArray(), view => Assert.Equal(0, (int)view!["buffer"]!));
        Assert.Equal(["image/png", "image/png", "image/png"], json["images"]!.AsArray().Select(image => (string?)image!["mimeType"]));
        Assert.All(written.Model.LogicalImages, image => Assert.Equal(Pixel, image.Content.Content.ToArray()));
        for (var i = 0; i < 3; i++)
            Assert.Equal(source.Model.LogicalAccessors[i].AsScalarArray(), written.Model.LogicalAccessors[i].AsScalarArray());
    }

    [Fact]
    public void A_gltf_written_elsewhere_stands_alone_and_one_written_beside_its_source_still_points_at_the_files_there()
    {
        var source = Textured("source/quay.gltf");
        source.Write(folder["out/quay.gltf"]);
        var alone = GltfFile.Read(folder["out/quay.gltf"]).ParseJson();
        Assert.Equal(["quay.gltf"], Directory.GetFiles(folder["out"]).Select(Path.GetFileName));
        Assert.All(alone["buffers"]!.AsArray(), buffer => Assert.StartsWith("data:", (string?)buffer!["uri"], StringComparison.Ordinal));
        Assert.All(alone["images"]!.AsArray().Take(2), image => Assert.StartsWith("data:image/png;base64,", (string?)image!["uri"], StringComparison.Ordinal));

        source.Write(folder["source/again.gltf"]);
        Assert.Equal(source.ParseJson().ToJsonString(), GltfFile.Read(folder["source/again.gltf"]).ParseJson().ToJsonString());
    }

    [Fact]
    public void Chunks_of_others_are_kept()
    {
        var bytes = SampleFile.Glb();
        byte[] withChunk = [.. bytes, 4, 0, 0, 0, (byte)'N', (byte)'O', (byte)'T', (byte)'E', 1, 2, 3, 4];
        BitConverter.TryWriteBytes(withChunk.AsSpan(8), withChunk.Length);
        GltfFile.Read(folder.Write("leg.glb", withChunk)).Write(folder["out.glb"]);
        Assert.Equal([4, 0, 0, 0, (byte)'N', (byte)'O', (byte)'T', (byte)'E', 1, 2, 3, 4], File.ReadAllBytes(folder["out.glb"])[^12..]);
    }

    [Fact]
    public void A_missing_folder_is_created_and_an_old_file_is_replaced()
    {
        var file = GltfFile.Read(folder.Write("leg.glb", SampleFile.Glb()));
        file.Write(folder["a/b/leg.glb"]);
        folder.Write("a/b/leg.glb", "old");
        file.Write(folder["a/b/leg.glb"]);
        Assert.Equal(File.ReadAllBytes(folder["a/b/leg.glb"])[..4], "glTF"u8.ToArray());
        Assert.Equal(["leg.glb"], Directory.GetFileSystemEntries(folder["a/b"]).Select(Path.GetFileName));
    }

    [Fact]
    public void A_folder_that_cannot_be_written_is_named_and_nothing_is_left()
    {
        var file = GltfFile.Read(folder.Write("leg.glb", SampleFile.Glb()));
        folder.Write("plain", "a file, no folder");
        Refused(folder["plain/leg.glb"]);
        Directory.CreateDirectory(folder["taken.glb"]);
        Refused(folder["taken.glb"]);
        Refused(folder["nul\0l.glb"]);
        if (Directory.Exists("/proc/self"))
            Refused("/proc/condyle/leg.glb");
        Assert.Equal(["leg.glb", "plain"], folder.FileNames);

        void Refused(string path)
        {
            var problem = Assert.Throws<BadInputException>(() => file.Write(path));
            Assert.Equal(path, problem.File);
            Assert.Contains("can't be written", problem.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_write_that_fails_halfway_leaves_the_old_file_and_no_other()
    {
        folder.Write("leg.glb", "the old file");
        Assert.Throws<BadInputException>(() => AtomicFile.Write(folder["leg.glb"], stream =>
        {
            stream.Write(new byte[100_000]);
            throw new IOException("No space left on device.");
        }));
        Assert.Equal("the old file", File.ReadAllText(folder["leg.glb"]));
        Assert.Equal(["leg.glb"], folder.FileNames);
    }

    [Fact]
    public void Another_extension_is_refused()
    {
        var file = GltfFile.Read(folder.Write("leg.glb", SampleFile.Glb()));
        Assert.Contains(".glb", Assert.Throws<BadInputException>(() => file.Write(folder["leg.bin"])).Message, StringComparison.Ordinal);
    }

    /// <summary>Three buffers (two files and a data URI) with one accessor each, two image files, and one image as a data URI.</summary>
    private GltfFile Textured(string path)
    {
        folder.Write("source/one.bin", [1, 2, 3, 4, 5]);
        folder.Write("source/sub/two.bin", [6, 7, 8, 9, 10, 11]);
        folder.Write("source/skin one.png", Pixel);
        folder.Write("source/sub/skin.png", Pixel);
        return GltfFile.Read(folder.Write(path, $$"""
            {
              "asset": { "version": "2.0" },
              "buffers": [
                { "byteLength": 5, "uri": "one.bin" },
                { "byteLength": 6, "uri": "sub/two.bin" },
                { "byteLength": 3, "uri": "data:application/octet-stream;base64,DA0O" }
              ],
              "bufferViews": [
                { "buffer": 0, "byteLength": 5 }, { "buffer": 1, "byteOffset": 2, "byteLength": 4 }, { "buffer": 2, "byteOffset": 1, "byteLength": 2 }
              ],
              "accessors": [
                { "bufferView": 0, "componentType": 5121, "type": "SCALAR", "count": 5 },
                { "bufferView": 1, "componentType": 5121, "type": "SCALAR", "count": 4 },
                { "bufferView": 2, "componentType": 5121, "type": "SCALAR", "count": 2 }
              ],
              "images": [
                { "uri": "skin%20one.png", "name": "one" },
                { "uri": "sub/skin.png", "mimeType": "image/png" },
                { "uri": "data:image/png;base64,{{Convert.ToBase64String(Pixel)}}" }
              ],
              "nodes": [ { "name": "quay" } ]
            }
            """));
    }
}
