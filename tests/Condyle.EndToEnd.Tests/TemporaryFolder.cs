namespace Condyle.EndToEnd.Tests;

/// <summary>A folder outside the repository that goes when the test is done.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Root { get; } = Directory.CreateTempSubdirectory("condyle-").FullName;

    public string PathTo(params string[] parts) => Path.Combine([Root, .. parts]);

    public void Write(string path, string text)
    {
        var file = PathTo(path);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllText(file, text);
    }

    /// <summary>Copies the sources of a folder: all but what a build made there.</summary>
    public void CopySources(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var relative = Path.GetRelativePath(from, file);
            if (relative.Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj"))
                continue;
            var copy = PathTo(to, relative);
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }

    public void Dispose() => Directory.Delete(Root, recursive: true);
}
