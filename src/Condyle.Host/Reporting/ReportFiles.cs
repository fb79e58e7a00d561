using System.Text.Json;
using System.Text.Json.Nodes;
using Condyle.Runtime;
using Condyle.Runtime.Gltf.Writing;

namespace Condyle.Host.Reporting;

/// <summary>Writes beside a baked file how its motion compares with the live motion.</summary>
internal static class ReportFiles
{
    private const string Text = ".report.txt", Json = ".report.json", Page = ".report.html";

    public static IEnumerable<string> PathsFor(string file) => new[] { Text, Json, Page }.Select(extension => Path.ChangeExtension(file, extension));

    /// <returns>The files that were written.</returns>
    public static IReadOnlyList<string> Write(RigBakeResult result) =>
    [
        Write(result.File, Text, string.Join('\n', result.Clips.Select(BakeReports.Text))),
        Write(result.File, Json, $"[\n{string.Join(",\n", result.Clips.Select(clip => BakeReports.Json(clip).TrimEnd()))}\n]\n"),
        Write(result.File, Page, BakeReports.Page(result.Rig, result.Clips)),
    ];

    /// <summary>
    /// Removes the reports of an earlier bake, which would speak of a file that isn't there any more. They are known by their JSON: what else has such a name is left alone.
    /// </summary>
    /// <exception cref="BadInputException">One can't be removed.</exception>
    public static void DiscardOld(string file)
    {
        if (!IsReport(Path.ChangeExtension(file, Json)))
            return;
        foreach (var path in PathsFor(file))
            AtomicFile.Remove(path);
    }

    private static bool IsReport(string path)
    {
        try
        {
            return File.Exists(path) && JsonNode.Parse(File.ReadAllBytes(path)) is JsonArray { Count: > 0 } reports
                && reports.All(report => report is JsonObject told && told.ContainsKey("clip") && told.ContainsKey("onFrames") && told.ContainsKey("joints"));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or JsonException)
        {
            return false;
        }
    }

    private static string Write(string file, string extension, string text)
    {
        var path = Path.ChangeExtension(file, extension);
        AtomicFile.Write(path, text);
        return path;
    }
}
