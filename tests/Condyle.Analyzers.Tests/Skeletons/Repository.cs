namespace Condyle.Analyzers.Tests.Skeletons;

/// <summary>Finds files of the repository from wherever the tests run.</summary>
internal static class Repository
{
    public static string PathTo(params string[] parts)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Condyle.slnx")))
            folder = folder.Parent;
        return Path.Combine([folder?.FullName ?? throw new DirectoryNotFoundException("Condyle.slnx is in no folder above the tests."), .. parts]);
    }
}
