using System.Text;

namespace Condyle.Runtime.Gltf.Writing;

/// <summary>Writes beside the target, flushes to disk and moves into place: a crash or a failure leaves the old file or the new one, and nothing else.</summary>
internal static class AtomicFile
{
    private const string Temporary = ".tmp";

    /// <exception cref="BadInputException">The folder or the file can't be written.</exception>
    public static void Write(string path, Action<Stream> write)
    {
        string? temporary = null;
        try
        {
            var target = Path.GetFullPath(path);
            var folder = Path.GetDirectoryName(target)!;
            Directory.CreateDirectory(folder);
            temporary = Path.Combine(folder, $".{Path.GetFileName(target)}.{Guid.NewGuid():N}{Temporary}");
            // It is moved while it is open, so that another program sees all along that it is no left-over.
            using var stream = new FileStream(temporary, FileMode.CreateNew, FileAccess.Write, FileShare.Delete);
            write(stream);
            stream.Flush(flushToDisk: true);
            File.Move(temporary, target, overwrite: true);
            temporary = null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new BadInputException(path, $"it can't be written: {problem.Message.TrimEnd('.')}", "Name a folder that you may write to, with room on its disk", inner: problem);
        }
        finally
        {
            if (temporary is not null)
                Discard(temporary);
        }
    }

    /// <summary>Writes text in UTF-8 the same way.</summary>
    /// <exception cref="BadInputException">It can't be written.</exception>
    public static void Write(string path, string text) => Write(path, stream => stream.Write(Encoding.UTF8.GetBytes(text)));

    /// <summary>Removes a file that an earlier run wrote.</summary>
    /// <exception cref="BadInputException">It can't be removed.</exception>
    public static void Remove(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new BadInputException(path, $"an earlier bake wrote it and it can't be removed: {problem.Message.TrimEnd('.')}", "Remove it yourself, or write to another folder", inner: problem);
        }
    }

    /// <summary>Removes what writing files left in their folder when its program was killed; what a program has open is being written.</summary>
    public static void DiscardLeftOvers(string folder, IEnumerable<string> names)
    {
        if (!Directory.Exists(folder))
            return;
        var written = names.ToHashSet(StringComparer.Ordinal);
        foreach (var leftOver in Directory.EnumerateFiles(folder, $".*{Temporary}"))
        {
            if (Path.GetFileName(leftOver)[1..^Temporary.Length] is var name && name.LastIndexOf('.') is >= 0 and var dot
                && Guid.TryParseExact(name[(dot + 1)..], "N", out _) && written.Contains(name[..dot]) && !IsOpen(leftOver))
                Discard(leftOver);
        }
    }

    private static bool IsOpen(string temporary)
    {
        try
        {
            using var stream = new FileStream(temporary, FileMode.Open, FileAccess.Write, FileShare.None);
            return false;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return true;
        }
    }

    private static void Discard(string temporary)
    {
        try
        {
            File.Delete(temporary);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // What stopped the write stops the clean-up too; the first failure is the one to report.
        }
    }
}
