using System.Text.Json;
using System.Text.Json.Serialization;
using Condyle.Runtime;
using Condyle.Runtime.Gltf.Writing;

namespace Condyle.Host.Sheets;

/// <summary>A rig's sheet as a file: what a build is compared with later.</summary>
internal static class SheetFile
{
    private static readonly JsonSerializerOptions Format = new(ReadableJson.Whole) { UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow };

    private static readonly string[] Channels = ["MoveX", "MoveY", "MoveZ", "TurnX", "TurnY", "TurnZ"];

    public static string ToJson(RigSheet sheet) => ReadableJson.Text(sheet);

    public static void Write(string path, RigSheet sheet) => AtomicFile.Write(path, ReadableJson.Text(sheet));

    /// <exception cref="BadInputException">The file can't be read, or holds no model.</exception>
    public static RigSheet Read(string path)
    {
        try
        {
            var sheet = JsonSerializer.Deserialize<RigSheet>(File.ReadAllBytes(path), Format) ?? throw new JsonException("it holds nothing");
            Check(sheet);
            return sheet;
        }
        catch (Exception problem) when (problem is JsonException or NotSupportedException or InvalidOperationException)
        {
            // What the parser says names our own types; what stands without a line was said here.
            var (what, place) = problem switch
            {
                JsonException { LineNumber: { } line, Path: null or "$" } => ("", $"line {line + 1}"),
                JsonException { LineNumber: not null, Path: var at } => ("", at),
                JsonException said => ($": {said.Message}", null),
                _ => ("", null),
            };
            throw new BadInputException(path, $"it is no model file{what}", "Name a file that tree --out wrote", place: place, inner: problem);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException)
        {
            var missing = problem is FileNotFoundException or DirectoryNotFoundException;
            throw new BadInputException(path, missing ? "the file isn't there" : $"the file can't be read: {problem.Message.TrimEnd('.')}", "Check the path and its permissions", inner: problem);
        }
    }

    /// <summary>What the types don't say of themselves.</summary>
    private static void Check(RigSheet sheet)
    {
        if (sheet.Nodes.Any(node => node is null || node.Limits.Contains(null!) || node.Settings.Contains(null!) || node.Settings.Any(setting => setting.Options?.Contains(null!) == true)) || sheet.Relations.Any(relation => relation is null || relation.Sources.Contains(null!)))
            throw new JsonException("a list has a null in it");
        if (sheet.Nodes.SelectMany(node => node.Limits).FirstOrDefault(limit => !Channels.Contains(limit.Channel)) is { Channel: var channel })
            throw new JsonException($"it limits '{channel}', which is no channel");
        if (sheet.Nodes.GroupBy(node => node.Name, StringComparer.Ordinal).FirstOrDefault(group => group.Count() > 1) is { Key: var twice })
            throw new JsonException($"it has two nodes '{twice}'");
        if (sheet.Nodes.FirstOrDefault(node => node.Place is { Count: not 3 } || node.Turn is { Count: not 4 } || (node.Place is null) != (node.Turn is null)) is { Name: var odd })
            throw new JsonException($"where '{odd}' rests isn't three numbers and a quaternion");
    }
}
