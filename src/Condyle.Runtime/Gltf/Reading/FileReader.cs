using System.Text.Json.Nodes;

namespace Condyle.Runtime.Gltf.Reading;

/// <summary>From a path to a checked file: container, JSON, resources, then everything that indexes something else.</summary>
internal static class FileReader
{
    public static GltfFile Read(string path)
    {
        var bytes = AllBytes(path);
        if (bytes.Length == 0)
            throw new BadInputException(path, "the file is empty", "Export or copy it again");
        var isGlb = GlbContainer.IsGlb(bytes);
        var container = isGlb ? GlbContainer.Read(path, bytes) : new GlbContainer(bytes, null, []);
        var root = JsonText.Parse(path, container.Json);
        RequireVersion2(root);
        RequireUnpacked(root);

        var folder = Path.GetDirectoryName(Path.GetFullPath(path)) ?? Path.GetPathRoot(Path.GetFullPath(path))!;
        var resources = new ResourceReader(folder);
        var buffers = resources.Buffers(root["buffers"], container.Binary);
        var views = BufferViewChecks.Check(root, buffers);
        var accessors = AccessorChecks.Check(root, views);
        HierarchyChecks.Check(root, accessors);
        AnimationChecks.Check(root, accessors);
        // A .glb that embeds images as data URIs came that way and stays so; in one that is made from a .gltf, the standard's validator warns of them.
        var images = resources.Images(root["images"], withDataUris: !isGlb);
        return new GltfFile(path, container.Json, buffers, images, container.Further);
    }

    private static byte[] AllBytes(string path)
    {
        try
        {
            return File.ReadAllBytes(path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            var missing = problem is FileNotFoundException or DirectoryNotFoundException;
            throw new BadInputException(path, missing ? "the file isn't there" : $"the file can't be read: {problem.Message.TrimEnd('.')}",
                missing ? "Check the path" : "Check the path and its permissions", inner: problem);
        }
    }

    /// <summary>The data of skins and animations may be packed as well as that of meshes, and then nothing of the file can be read.</summary>
    private static void RequireUnpacked(JsonSpot root)
    {
        foreach (var required in root["extensionsRequired"] is { Value: JsonArray } list ? list.Items : [])
        {
            if (required.Value is JsonValue value && value.TryGetValue(out string? name) && name.EndsWith("_meshopt_compression", StringComparison.Ordinal))
                throw required.Wrong($"is '{name}': the file's data are packed, and can't be unpacked here", "Export it without that compression, and compress what is baked when the engine's files are made");
        }
    }

    private static void RequireVersion2(JsonSpot root)
    {
        if (root.Value is not JsonObject)
            throw root.Wrong("the JSON isn't a glTF object", "Name a .gltf or .glb file");
        var asset = root["asset"];
        if (!asset.Exists)
            throw asset.Wrong("is missing, so this is no glTF file", "Name a .gltf or .glb file");
        var version = asset["minVersion"].Text ?? asset["version"].Text;
        if (version is null || !version.StartsWith("2.", StringComparison.Ordinal))
            throw asset["version"].Wrong($"is {(version is null ? "missing" : $"'{version}'")}, not 2.0", "Export the file as glTF 2.0");
    }
}
