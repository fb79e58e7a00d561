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
    private const string Extension = ".bake.json";

    public static string PathFor(string output) => Path.ChangeExtension(output, Extension);

    /// <summary>The manifest beside a file; null when there is none that can be read, so that the work is done again.</summary>
    public static BakeManifest? Find(string output) => Read(PathFor(output));

    /// <summary>The manifest of this work if it was finished and its files are as they were written, else null.</summary>
    public static BakeManifest? FindFinished(string output, string work) => Find(output) is { } manifest && manifest.Work == work
        && manifest.Files.Any(file => file.Name == Path.GetFileName(output)) && manifest.Files.All(file => file.IsThere(Path.GetDirectoryName(Path.GetFullPath(output))!)) ? manifest : null;

    /// <summary>The names of a folder's files that lie there as a batch wrote them.</summary>
    public static IReadOnlySet<string> ResultsIn(string folder) => Directory.EnumerateFiles(folder, "*" + Extension)
        .Select(Read).OfType<BakeManifest>().SelectMany(manifest => manifest.Files).Where(file => file.IsThere(folder)).Select(file => file.Name).ToHashSet(StringComparer.Ordinal);

    /// <summary>Removes the manifest of a batch beside a file that another bake has written since, and what else that batch left there.</summary>
    /// <param name="output">The file after which the manifest is called.</param>
    /// <param name="now">The files that the other bake wrote.</param>
    /// <exception cref="BadInputException">It can't be removed.</exception>
    public static void DiscardOld(string output, IEnumerable<string> now)
    {
        if (Find(output) is not { } manifest)
            return;
        WrittenFile.DiscardOld(manifest.Files, now, Path.GetDirectoryName(Path.GetFullPath(output))!);
        AtomicFile.Remove(PathFor(output));
    }

    private static BakeManifest? Read(string path)
    {
        try
        {
            return JsonSerializer.Deserialize<BakeManifest>(File.ReadAllBytes(path), ReadableJson.Whole) is { } manifest && !manifest.Clips.Contains(null!) && !manifest.Files.Contains(null!) ? manifest : null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or JsonException or NotSupportedException)
        {
            return null;
        }
    }

    public void Write(string output) => AtomicFile.Write(PathFor(output), ReadableJson.Text(this));
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
