using System.Text.Json.Nodes;
using Condyle.Runtime;

namespace Quayside.Tests;

/// <summary>The dock worker's rig comes off: what isn't motion is as it was delivered, and nothing of the rig is in the file.</summary>
public sealed class StevedoreAsDeliveredTests : IDisposable
{
    private static readonly string Delivered = Path.Combine(AppContext.BaseDirectory, "stevedore.gltf");

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("quayside-");

    [Fact]
    public void With_a_clip_of_the_rig_at_rest_all_that_was_delivered_is_there_byte_for_byte_and_nothing_else_but_the_clip()
    {
        var file = Path.Combine(folder.FullName, "stevedore.gltf");
        RigBaker.Run(RigCompiler.Compile(Condyle.Rig.Build(new Stevedore())), Delivered, [new Clip("rest", seconds: 1).Move("world", 0)], file);

        var (before, after) = (JsonNode.Parse(File.ReadAllText(Delivered))!.AsObject(), JsonNode.Parse(File.ReadAllText(file))!.AsObject());
        var bytes = Buffer(before, Delivered);
        Assert.True(Buffer(after, file).AsSpan().StartsWith(bytes), "the delivered bytes have changed");
        foreach (var list in new[] { "bufferViews", "accessors" })
        {
            Assert.Equal(before[list]!.AsArray().Select(item => item!.ToJsonString()), after[list]!.AsArray().Take(before[list]!.AsArray().Count).Select(item => item!.ToJsonString()));
            Assert.True(before.Remove(list) && after.Remove(list));
        }

        Assert.True(before.Remove("buffers") && after.Remove("buffers") && after.Remove("animations"));
        Assert.Equal(before.ToJsonString(), after.ToJsonString());
    }

    public void Dispose() => folder.Delete(recursive: true);

    private static byte[] Buffer(JsonNode gltf, string path)
    {
        var uri = (string)gltf["buffers"]![0]!["uri"]!;
        return uri.StartsWith("data:", StringComparison.Ordinal)
            ? Convert.FromBase64String(uri[(uri.IndexOf(',', StringComparison.Ordinal) + 1)..])
            : File.ReadAllBytes(Path.Combine(Path.GetDirectoryName(path)!, uri));
    }
}
