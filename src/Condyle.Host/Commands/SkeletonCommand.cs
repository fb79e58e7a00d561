using Condyle.Host.Reporting;
using Condyle.Runtime;
using Condyle.Runtime.Gltf;
using Condyle.Runtime.Gltf.Writing;

namespace Condyle.Host.Commands;

/// <summary>Writes the nodes and skins of a file as a small text file.</summary>
internal static class SkeletonCommand
{
    public static int Run(Surroundings surroundings, string file, string? output, bool json)
    {
        var text = SkeletonFile.Extract(GltfFile.Read(file));
        output ??= Path.ChangeExtension(file, ".gltf");
        if (!Path.GetExtension(output).Equals(".gltf", StringComparison.OrdinalIgnoreCase))
            throw new BadInputException(output, "a skeleton is written as text", "Name the file .gltf");
        if (File.Exists(output) && !IsSkeletonOnly(output))
            throw new BadInputException(output, "it holds more than a skeleton, which would be lost", "Name another file with --out");
        AtomicFile.Write(output, text);
        if (json)
            JsonReport.Write(surroundings.Output, new { file = output });
        else
            surroundings.Tell($"wrote {output}");
        return ExitCode.Ok;
    }

    /// <summary>What this verb wrote before may be written again; a delivered file with meshes or data may not.</summary>
    private static bool IsSkeletonOnly(string path)
    {
        try
        {
            var json = GltfFile.Read(path).ParseJson();
            return json["meshes"] is null && json["animations"] is null && json["buffers"] is null;
        }
        catch (BadInputException)
        {
            return false;
        }
    }
}
