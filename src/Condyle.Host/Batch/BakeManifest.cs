using System.Text.Json;
using Condyle.Runtime;
using Condyle.Runtime.Gltf.Writing;

namespace Condyle.Host.Batch;

/// <summary>
/// What lies beside a finished bake: which work it was, and what was written. It is written last, so a bake that was killed has none;
/// it holds no time and no machine, so the same work leaves the same bytes.
/// </summary>
/// <param name="Work">The hash of the rig, the files, the settings and the program.</param>
/// <param name="Rig">The rig's name.</param>
/// <param name="Input">The name of the file of clips.</param>
/// <param name="Files">What was written.</param>
/// <param name="Clips">What was baked.</param>
/// <param name="LeftOut">The nodes that the file moves and the rig hasn't; none where a manifest doesn't say.</param>
internal sealed record BakeManifest(string Work, string Rig, string Input, IReadOnlyList<WrittenFile> Files, IReadOnlyList<BakedPart> Clips, IReadOnlyList<string>? LeftOut)
{
    public static string PathFor(string output) => Path.ChangeExtension(output, ".bake.json");

    /// <summary>The manifest of this work if it was finished and its files are as they were written, else null.</summary>
    public static BakeManifest? FindFinished(string output, string work)
    {
        try
        {
            var manifest = JsonSerializer.Deserialize<BakeManifest>(File.ReadAllBytes(PathFor(output)), ReadableJson.Whole);
            var folder = Path.GetDirectoryName(Path.GetFullPath(output))!;
            return manifest?.Work == work && !manifest.Clips.Contains(null!) && manifest.Files.Any(file => file?.Name == Path.GetFileName(output)) && manifest.Files.All(file => file is not null && file.IsThere(folder)) ? manifest : null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or JsonException or NotSupportedException or ArgumentException)
        {
            // What can't be read tells nothing: the work is done again.
            return null;
        }
    }

    public void Write(string output) => AtomicFile.Write(PathFor(output), ReadableJson.Text(this));
}

/// <summary>A file that a bake wrote.</summary>
/// <param name="Name">Its name, in the manifest's folder.</param>
/// <param name="Bytes">Its length.</param>
/// <param name="Sha256">The hash of its content.</param>
internal sealed record WrittenFile(string Name, long Bytes, string Sha256)
{
    public static WrittenFile Of(string path) => new(Path.GetFileName(path), new FileInfo(path).Length, FileHash.Of(path));

    public bool IsThere(string folder) => Path.GetFileName(Name) == Name && Path.Combine(folder, Name) is var path
        && new FileInfo(path) is { Exists: true } file && file.Length == Bytes && FileHash.Of(path) == Sha256;
}

/// <summary>A clip that was baked, in short.</summary>
/// <param name="Clip">Its name.</param>
/// <param name="Frames">The number of samples.</param>
/// <param name="Seconds">Its length.</param>
/// <param name="Keys">The number of keys.</param>
/// <param name="OnFramesMetres">How far a joint is off at most on a sample.</param>
/// <param name="BetweenMetres">How far between samples.</param>
/// <param name="BeyondLimits">Which controls it takes beyond their limits; none where a manifest doesn't say.</param>
internal sealed record BakedPart(string Clip, int Frames, float Seconds, long Keys, double OnFramesMetres, double BetweenMetres, IReadOnlyList<string>? BeyondLimits)
{
    public static BakedPart Of(BakeReport report, IReadOnlyList<string> beyondLimits) =>
        new(report.Clip, report.Frames, report.Seconds, report.Keys, report.OnFrames.Metres.Value, report.Between.Metres.Value, beyondLimits);
}
