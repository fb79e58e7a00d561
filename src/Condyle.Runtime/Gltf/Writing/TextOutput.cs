using System.Text.Json.Nodes;
using Condyle.Runtime.Gltf.Reading;

namespace Condyle.Runtime.Gltf.Writing;

/// <summary>
/// A file laid out as .gltf. Two files can't be replaced in one step, so data that isn't in the target's folder goes into the JSON as data URIs.
/// Written into the folder that it came from, the file keeps pointing at what lies there.
/// </summary>
internal sealed class TextOutput
{
    /// <summary>The longest text that the JSON writer takes, less the URI's head.</summary>
    private const int MostBytes = 124_000_000;

    private readonly JsonObject json;

    private TextOutput(JsonObject json) => this.json = json;

    public static TextOutput Prepare(GltfFile source, string target)
    {
        var json = source.ParseJson();
        var staysHome = FolderOf(source.Path) == FolderOf(target);
        for (var i = 0; i < source.Buffers.Count; i++)
        {
            var home = source.Buffers[i].Home;
            if (home == BufferHome.Inside || (home == BufferHome.File && !staysHome))
                json["buffers"]![i]!["uri"] = DataUri("application/octet-stream", source.Buffers[i].Whole().Span, target);
        }
        if (!staysHome)
        {
            foreach (var (index, image) in source.Images.Where(image => image.Value.Home == BufferHome.File))
                json["images"]![index]!["uri"] = DataUri(ImageFormat.MimeTypeOf(image.Bytes.Span), image.Bytes.Span, target);
        }
        return new TextOutput(json);
    }

    public void WriteTo(Stream stream)
    {
        stream.Write(JsonText.Readable(json));
        stream.WriteByte((byte)'\n');
    }

    private static string? FolderOf(string path) => Path.GetDirectoryName(Path.GetFullPath(path));

    private static string DataUri(string mimeType, ReadOnlySpan<byte> bytes, string target) => bytes.Length <= MostBytes
        ? $"data:{mimeType};base64,{Convert.ToBase64String(bytes)}"
        : throw new BadInputException(target, $"{bytes.Length} bytes of data don't fit a .gltf", "Write a .glb instead");
}
