using Condyle.Runtime;

namespace Condyle.Host.Batch;

/// <summary>A file of clips, and the file that its bake becomes.</summary>
/// <param name="Path">The file, as it was named.</param>
/// <param name="Name">Its name without folder and extension.</param>
/// <param name="Output">The file that is written.</param>
internal sealed record BatchInput(string Path, string Name, string Output)
{
    /// <summary>The files that are named, by themselves, by a pattern or by their folder, in the order of their names.</summary>
    /// <exception cref="BadInputException">A pattern or a folder has none, or two files would become one.</exception>
    public static IReadOnlyList<BatchInput> Of(IEnumerable<string> named, string folder)
    {
        List<BatchInput> inputs = [.. Checked(named).SelectMany(Files)
            .DistinctBy(System.IO.Path.GetFullPath)
            .Select(path => new BatchInput(path, System.IO.Path.GetFileNameWithoutExtension(path), System.IO.Path.Combine(folder, System.IO.Path.GetFileNameWithoutExtension(path) + ".glb")))
            .OrderBy(input => input.Name, StringComparer.Ordinal)];
        if (inputs.GroupBy(input => input.Name, StringComparer.OrdinalIgnoreCase).FirstOrDefault(group => group.Count() > 1) is { } twice)
            throw new BadInputException(twice.Last().Path, $"it would be written to the same file as {twice.First().Path}", "Give each file of clips its own name, letter case aside");
        if (inputs.Find(input => System.IO.Path.GetFullPath(input.Path) == System.IO.Path.GetFullPath(input.Output)) is { } onto)
            throw new BadInputException(onto.Path, "its bake would be written over it", "Write to another folder with --out");
        return inputs;
    }

    private static IEnumerable<string> Checked(IEnumerable<string> named) =>
        named.Select(path => path.Length > 0 && !path.Contains('\0', StringComparison.Ordinal) ? path : throw new BadInputException("bake", "a file of clips has no name", "Name files, patterns or folders"));

    private static IEnumerable<string> Files(string named)
    {
        var pattern = System.IO.Path.GetFileName(named);
        if (Directory.Exists(named))
            return Listed(named, named, "*");
        return pattern.AsSpan().IndexOfAny('*', '?') < 0 ? [named] : Listed(named, System.IO.Path.GetDirectoryName(named) is { Length: > 0 } folder ? folder : ".", pattern);
    }

    private static List<string> Listed(string named, string folder, string pattern)
    {
        try
        {
            List<string> found = [.. Directory.EnumerateFiles(folder, pattern).Where(file => System.IO.Path.GetExtension(file).ToLowerInvariant() is ".glb" or ".gltf")];
            return found.Count > 0 ? found : throw new BadInputException(named, "there is no .glb or .gltf file", "Check the path");
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new BadInputException(named, $"the folder can't be read: {problem.Message.TrimEnd('.')}", "Check the path and its permissions", inner: problem);
        }
    }
}
