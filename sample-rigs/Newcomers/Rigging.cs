using System.Globalization;
using Condyle;
using Condyle.Runtime;
using Condyle.Runtime.Gltf;

namespace Newcomers;

/// <summary>The whole way of a file through the program: read, rig, play, bake, prove, write.</summary>
internal static class Rigging
{
    /// <summary>Rigs a file and writes the result.</summary>
    /// <returns>Whether the rig leaves the rest as it was delivered, and the baked motion is the live motion.</returns>
    /// <exception cref="BadInputException">The file can't be used, or the result can't be written.</exception>
    public static bool Run(string file, string? output, TextWriter report)
    {
        output = OutputOf(file, output);
        var delivered = GltfFile.Read(file);
        var skeleton = GltfSkeleton.Read(delivered);
        report.WriteLine($"{Path.GetFileName(file)}: {Count(skeleton.Joints.Count, "joint")}, {Count(skeleton.Skins.Count, "skin")}, {Count(delivered.Model.LogicalAnimations.Count, "clip")} of its own");

        if (delivered.Remark is { } remark)
            report.WriteLine($"  note: {Plain(remark)}; that stays as it was delivered");

        var newcomer = new Newcomer(delivered, skeleton);
        var rig = RigCompiler.Compile(Rig.Build(newcomer));
        report.WriteLine($"  {Count(rig.Controls.Count, "control")}; {Count(newcomer.Limbs.Count, "limb")} with IK and FK{Listed(newcomer.Limbs.Select(limb => Say(limb, skeleton)))}");
        if (newcomer.StillJoints.Count > 0)
            report.WriteLine($"  {Count(newcomer.StillJoints.Count, "joint")} left at rest: flattened by a scale of zero, or the place of a skinned mesh{Listed(newcomer.StillJoints)}");

        var motion = RangeOfMotion.Of(rig);
        var settings = new BakeSettings { FramesPerSecond = FrameRate.For(motion, rig), ReplaceClips = true };
        var result = RigBaker.Run(rig, file, [motion], output, settings);
        return Say(result, report);
    }

    private static string OutputOf(string file, string? output)
    {
        var name = Path.GetFileNameWithoutExtension(file) + "-rigged.glb";
        output ??= Path.Combine(Path.GetDirectoryName(file) ?? "", name);
        if (Directory.Exists(output))
            output = Path.Combine(output, name);
        return Path.GetExtension(output).ToLowerInvariant() is ".glb" or ".gltf"
            ? output
            : throw new BadInputException(output, "the output's extension is neither .glb nor .gltf", "Name the file .glb (one binary file) or .gltf (text)");
    }

    private static bool Say(RigBakeResult result, TextWriter report)
    {
        report.WriteLine(FormattableString.Invariant($"  at rest: within {Say(result.Rest.Largest)} of the delivered skeleton"));
        if (result.Rest.Moved.Count > 0)
            report.WriteLine($"  error: {Count(result.Rest.Moved.Count, "joint")} at rest elsewhere than delivered{Listed(result.Rest.Moved)}");
        foreach (var clip in result.Clips)
        {
            report.WriteLine(FormattableString.Invariant($"  {clip.Clip}: {clip.Frames} frames at {clip.FramesPerSecond}/s, baked is live within {Say(clip.OnFrames)}{(clip.Holds ? "" : ": error, that is more than allowed")}"));
        }

        report.WriteLine(FormattableString.Invariant($"  wrote {result.File}, {result.Bytes / 1e6:0.00} MB"));
        return result.Holds && result.Rest.Moved.Count == 0;
    }

    private static string Say(Limb limb, GltfSkeleton skeleton) => string.Join(" > ", limb.Bones.Select(bone => skeleton.Joints[bone].Name));

    private static string Say(Deviation deviation) => string.Create(CultureInfo.InvariantCulture, $"{deviation.Metres.Value * 1000:0.0000} mm and {deviation.Degrees.Value:0.0000}°");

    private static string Count(int count, string noun) => count == 1 ? $"1 {noun}" : $"{count} {noun}s";

    private static string Listed(IEnumerable<string> names)
    {
        const int most = 8;
        var all = names.ToList();
        var shown = string.Join(", ", all.Take(most)) + (all.Count > most ? $" and {all.Count - most} more" : "");
        return shown.Length == 0 ? "" : $": {Plain(shown)}";
    }

    /// <summary>Text of a file on one line.</summary>
    private static string Plain(string text) => new([.. text.Select(character => char.IsControl(character) ? ' ' : character)]);
}
