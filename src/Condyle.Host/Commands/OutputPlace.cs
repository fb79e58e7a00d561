using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>What <c>--out</c> names: a folder, or, where one file is written and it ends like one, that file.</summary>
internal static class OutputPlace
{
    /// <summary>Where a file is written that has this name in a folder.</summary>
    public static string Of(string said, string name) => IsFile(said) ? said : Path.Combine(said, name);

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

    private static bool IsFile(string said) => Path.GetExtension(said).ToLowerInvariant() is ".glb" or ".gltf" && !Directory.Exists(said);
}
