namespace Condyle.Runtime.Gltf.Writing;

/// <summary>A file that a bake wrote, as its manifest tells it.</summary>
/// <param name="Name">Its name, in the manifest's folder.</param>
/// <param name="Bytes">Its length.</param>
/// <param name="Sha256">The hash of its content.</param>
internal sealed record WrittenFile(string Name, long Bytes, string Sha256)
{
    public static WrittenFile Of(string path) => new(Path.GetFileName(path), new FileInfo(path).Length, FileHash.Of(path));

    /// <summary>Whether it lies there as it was written; false where that can't be told.</summary>
    public bool IsThere(string folder)
    {
        try
        {
            return Name.IndexOfAny(Path.GetInvalidFileNameChars()) < 0 && Path.Combine(folder, Name) is var path
                && new FileInfo(path) is { Exists: true } file && file.Length == Bytes && FileHash.Of(path) == Sha256;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <summary>Removes what an earlier bake wrote and this one didn't. What doesn't lie there as it was written is somebody else's by now.</summary>
    /// <param name="earlier">What the earlier bake's manifest tells.</param>
    /// <param name="now">The files that were written now.</param>
    /// <param name="folder">Where they lie.</param>
    /// <exception cref="BadInputException">One can't be removed.</exception>
    public static void DiscardOld(IEnumerable<WrittenFile> earlier, IEnumerable<string> now, string folder)
    {
        var kept = now.Select(path => Path.GetFileName(path)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        foreach (var old in earlier.Where(file => !kept.Contains(file.Name) && file.IsThere(folder)))
            AtomicFile.Remove(Path.Combine(folder, old.Name));
    }
}
