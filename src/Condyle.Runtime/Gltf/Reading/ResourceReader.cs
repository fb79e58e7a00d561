using System.Buffers.Text;
using System.Text.Json.Nodes;

namespace Condyle.Runtime.Gltf.Reading;

/// <summary>Fetches what the JSON points to: the binary chunk, data URIs, and files below the folder. Sizes are compared before anything is allocated.</summary>
internal sealed class ResourceReader(string folder)
{
    public IReadOnlyList<GltfBuffer> Buffers(JsonSpot buffers, ReadOnlyMemory<byte>? binary)
    {
        var found = new List<GltfBuffer>();
        foreach (var buffer in buffers.Items)
        {
            var length = (int)buffer["byteLength"].Whole(1, Array.MaxLength);
            var uri = buffer["uri"];
            found.Add(uri.Text switch
            {
                null when found.Count == 0 && binary is { } chunk => new(Exactly(length, chunk, buffer), BufferHome.Inside),
                null when IsPacked(buffer) => throw buffer.Wrong("is packed by an extension that can't be read here", "Unpack the file first, or export it without that compression"),
                null => throw buffer.Wrong("has neither a URI nor a binary chunk", "Export the file again with its buffers"),
                { } text when IsDataUri(text) => new(Exactly(length, Decode(uri, text), buffer), BufferHome.DataUri),
                { } text => new(ReadFile(uri, text, length), BufferHome.File),
            });
        }
        return found;
    }

    public IReadOnlyDictionary<int, GltfBuffer> Images(JsonSpot images, bool withDataUris)
    {
        var found = new Dictionary<int, GltfBuffer>();
        foreach (var (index, image) in images.Items.Index())
        {
            var uri = image["uri"];
            if (uri.Text is not { } text)
                continue;
            if (!IsDataUri(text))
                found[index] = new GltfBuffer(ReadFile(uri, text, null), BufferHome.File);
            else if (withDataUris)
                found[index] = new GltfBuffer(Decode(uri, text), BufferHome.DataUri);
        }
        return found;
    }

    /// <summary>Extensions that compress whole buffer views leave a buffer without data in their place, and mark it so.</summary>
    private static bool IsPacked(JsonSpot buffer) =>
        buffer["extensions"].Value is JsonObject extensions && extensions.Any(extension => extension.Value is JsonObject packing && packing["fallback"] is not null);

    private static bool IsDataUri(string uri) => uri.StartsWith("data:", StringComparison.OrdinalIgnoreCase);

    private static ReadOnlyMemory<byte> Exactly(int length, ReadOnlyMemory<byte> bytes, JsonSpot buffer) => length <= bytes.Length
        ? bytes[..length]
        : throw buffer["byteLength"].Wrong($"claims {length} bytes, but there are {bytes.Length}", "Export or copy the file again");

    private static byte[] Decode(JsonSpot uri, string text)
    {
        var comma = text.IndexOf(',', StringComparison.Ordinal);
        if (comma < 0 || !text[..comma].EndsWith(";base64", StringComparison.OrdinalIgnoreCase) || !Base64.IsValid(text.AsSpan(comma + 1)))
            throw uri.Wrong("is no base64 data URI", "Export the file again");
        return Convert.FromBase64String(text[(comma + 1)..]);
    }

    private byte[] ReadFile(JsonSpot uri, string text, int? length)
    {
        var path = Resolve(uri, text);
        try
        {
            if (LeavesByLink(path))
                throw Outside(uri, text);
            using var stream = File.OpenRead(path);
            if (stream.Length > Array.MaxLength || stream.Length < length)
                throw uri.Wrong($"the file '{text}' has {stream.Length} bytes, but {length ?? Array.MaxLength} are claimed", "Export or copy both files again");
            var bytes = new byte[length ?? (int)stream.Length];
            stream.ReadExactly(bytes);
            return bytes;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            var missing = problem is FileNotFoundException or DirectoryNotFoundException;
            throw uri.Wrong($"the file '{text}' {(missing ? "isn't there" : "can't be read")}", "Put it where the URI says, or export a .glb", problem);
        }
    }

    private string Resolve(JsonSpot uri, string text)
    {
        try
        {
            var relative = Uri.UnescapeDataString(text).Replace('\\', '/');
            var path = Path.GetFullPath(Path.Combine(folder, relative));
            var inside = Path.TrimEndingDirectorySeparator(folder) + Path.DirectorySeparatorChar;
            if (!Path.IsPathRooted(relative) && !relative.Contains(':', StringComparison.Ordinal) && path.StartsWith(inside, StringComparison.Ordinal))
                return path;
        }
        catch (ArgumentException problem)
        {
            throw uri.Wrong("is no path", "Write a relative path", problem);
        }
        throw Outside(uri, text);
    }

    /// <summary>Whether the file, or a folder on the way to it, is a link to somewhere outside.</summary>
    private bool LeavesByLink(string path)
    {
        var home = Real(new DirectoryInfo(folder));
        for (var at = path; at.Length > folder.Length; at = Path.GetDirectoryName(at)!)
        {
            FileSystemInfo entry = Directory.Exists(at) ? new DirectoryInfo(at) : new FileInfo(at);
            if (entry.LinkTarget is not null && !Real(entry).StartsWith(home + Path.DirectorySeparatorChar, StringComparison.Ordinal))
                return true;
        }

        return false;
    }

    private static string Real(FileSystemInfo entry) => Path.TrimEndingDirectorySeparator((entry.ResolveLinkTarget(returnFinalTarget: true) ?? entry).FullName);

    private static BadInputException Outside(JsonSpot uri, string text) =>
        uri.Wrong($"'{text}' lies outside the file's folder", "Keep everything that a .gltf points to below its folder, or export a .glb");
}
