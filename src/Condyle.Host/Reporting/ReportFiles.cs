using System.Text;
using Condyle.Runtime;
using Condyle.Runtime.Gltf.Writing;

namespace Condyle.Host.Reporting;

/// <summary>Writes beside a baked file how its motion compares with the live motion.</summary>
internal static class ReportFiles
{
    public static void Write(RigBakeResult result)
    {
        Write(result.File, ".report.txt", string.Join('\n', result.Clips.Select(BakeReports.Text)));
        Write(result.File, ".report.json", $"[\n{string.Join(",\n", result.Clips.Select(clip => BakeReports.Json(clip).TrimEnd()))}\n]\n");
        Write(result.File, ".report.html", BakeReports.Page(result.Rig, result.Clips));
    }

    private static void Write(string file, string extension, string text) =>
        AtomicFile.Write(Path.ChangeExtension(file, extension), stream => stream.Write(Encoding.UTF8.GetBytes(text)));
}
