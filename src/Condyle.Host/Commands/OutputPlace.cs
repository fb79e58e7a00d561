using Condyle.Runtime;
using Condyle.Runtime.Gltf.Writing;

namespace Condyle.Host.Commands;

/// <summary>What <c>--out</c> names: a folder, or, where one file is written and it ends like one, that file.</summary>
internal static class OutputPlace
{
    /// <summary>Where a file is written that has this name in a folder.</summary>
    public static string Of(string said, string name) => IsFile(said) ? said : Path.Combine(said, name);

    /// <summary>A clip's name as a part of a file's name: what no file's name may hold, on any system, becomes an underscore.</summary>
    public static string NameFor(string clip) => string.Concat(clip.Select(character => char.IsControl(character) || "\"*/:<>?\\|".Contains(character, StringComparison.Ordinal) ? '_' : character));

    /// <summary>Refuses to write over a file that was read, or over the one that it is a copy of: a build lays copies of delivered files beside the program.</summary>
    /// <exception cref="BadInputException">It would be lost.</exception>
    public static void CheckLoses(string output, params ReadOnlySpan<string> read)
    {
        foreach (var file in read)
        {
            if (IsSame(output, file))
                throw new BadInputException(output, $"it is what is read as {file}, and would be lost", "Write to another place with --out");
        }
    }

    /// <exception cref="BadInputException">A file is named for several.</exception>
    public static void CheckHolds(string said, int files)
    {
        if (files > 1 && IsFile(said))
            throw new BadInputException("--out", $"'{said}' is one file, and there are {files} to write", "Name a folder");
    }

    /// <exception cref="BadInputException">A file is named where a folder must be.</exception>
    public static void CheckIsFolder(string said)
    {
        if (IsFile(said))
            throw new BadInputException("--out", $"'{said}' is one file, and files are written by names of their own", "Name a folder");
    }

    private static bool IsSame(string output, string read)
    {
        try
        {
            return Path.GetFullPath(output) == Path.GetFullPath(read) || new FileInfo(output) is { Exists: true } there && new FileInfo(read) is { Exists: true } delivered && there.Length == delivered.Length && FileHash.Of(output) == FileHash.Of(read);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            // Reading the one or writing the other says why.
            return false;
        }
    }

    private static bool IsFile(string said) => Path.GetExtension(said).ToLowerInvariant() is ".glb" or ".gltf" && !Directory.Exists(said);
}
