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

    private static string Write(string file, string extension, string text)
    {
        var path = Path.ChangeExtension(file, extension);
        AtomicFile.Write(path, text);
        return path;
    }
}
