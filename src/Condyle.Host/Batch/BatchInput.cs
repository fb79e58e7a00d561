using Condyle.Runtime;

namespace Condyle.Host.Batch;

/// <summary>A file of clips, and the file that its bake becomes.</summary>
/// <param name="Path">The file, as it was named.</param>
/// <param name="Name">Its name without folder and extension.</param>
/// <param name="Output">The first file that is written, after which what lies beside it is called.</param>
internal sealed record BatchInput(string Path, string Name, string Output)
{
    /// <summary>The files that are named, by themselves, by a pattern or by their folder, in the order of their names.</summary>
    /// <exception cref="BadInputException">A pattern or a folder has none, or two files have one name.</exception>
    public static IReadOnlyList<BatchInput> Of(IEnumerable<string> named, IBakeTarget target, string folder)
    {
        List<BatchInput> inputs = [.. Checked(named).SelectMany(Files)
            .DistinctBy(System.IO.Path.GetFullPath)
            .Select(path => (Path: path, Name: System.IO.Path.GetFileNameWithoutExtension(path)))
            .Select(file => new BatchInput(file.Path, file.Name, System.IO.Path.Combine(folder, target.FilesFor(file.Name)[0])))
            .OrderBy(input => input.Name, StringComparer.Ordinal)];
        if (inputs.GroupBy(input => input.Name, StringComparer.OrdinalIgnoreCase).FirstOrDefault(group => group.Count() > 1) is { } twice)
            throw new BadInputException(twice.Last().Path, $"it would be written to the same file as {twice.First().Path}", "Give each file of clips its own name, letter case aside");
        return inputs;
    }

    /// <summary>Refuses a batch that would write over what it reads: only files that are really both.</summary>
    /// <exception cref="BadInputException">One is.</exception>
    public static void CheckKept(IEnumerable<BatchInput> inputs, string delivered, IBakeTarget target, string folder)
    {
        var place = RealPath.Of(folder);
        var read = inputs.Select(input => input.Path).Prepend(delivered).GroupBy(RealPath.Of, StringComparer.OrdinalIgnoreCase).ToDictionary(same => same.Key, same => same.First(), StringComparer.OrdinalIgnoreCase);
        foreach (var file in inputs.SelectMany(input => target.FilesFor(input.Name)))
        {
            if (read.GetValueOrDefault(System.IO.Path.Combine(place, file)) is { } lost)
                throw new BadInputException(lost, lost == delivered ? "it is the delivered file, and a bake would be written over it" : "a bake would be written over it", "Write to another folder with --out");
        }
    }

    private static IEnumerable<string> Checked(IEnumerable<string> named) =>
        named.Select(path => !path.Contains('\0', StringComparison.Ordinal) ? path : throw new BadInputException("bake", "a file of clips has no name", "Name files, patterns or folders"));

    private static IEnumerable<string> Files(string named)
    {
        var pattern = System.IO.Path.GetFileName(named);
        if (Directory.Exists(named))
            return Listed(named, named, "*");
        return pattern.AsSpan().IndexOfAny('*', '?') < 0 ? [named] : Listed(named, System.IO.Path.GetDirectoryName(named) is { Length: > 0 } folder ? folder : ".", pattern);
    }

    /// <summary>What a batch wrote into the folder is a result, and no file of clips.</summary>
    private static List<string> Listed(string named, string folder, string pattern)
    {
        try
        {
            var results = BakeManifest.ResultsIn(folder);
            List<string> found = [.. Directory.EnumerateFiles(folder, pattern).Where(file => System.IO.Path.GetExtension(file).ToLowerInvariant() is ".glb" or ".gltf" && !results.Contains(System.IO.Path.GetFileName(file)))];
            return found.Count > 0 ? found : throw new BadInputException(named, results.Count > 0 ? "there is no .glb or .gltf file but what a bake wrote" : "there is no .glb or .gltf file", "Check the path");
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new BadInputException(named, $"the folder can't be read: {problem.Message.TrimEnd('.')}", "Check the path and its permissions", inner: problem);
        }
    }
}
