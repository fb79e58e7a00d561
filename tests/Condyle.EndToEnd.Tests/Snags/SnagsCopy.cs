using Condyle.EndToEnd.Tests.Clients;

namespace Condyle.EndToEnd.Tests.Snags;

/// <summary>
/// The Snags project in a folder of its own. It imports the repository's analyzers.props, and takes the projects behind it as they were
/// built: tests run side by side, and none may build what another one uses.
/// </summary>
public sealed class SnagsCopy : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public SnagsCopy()
    {
        folder.CopySources(Repository.PathTo("sample-rigs", "Snags"), "sample-rigs/Snags");
        File.Copy(Repository.PathTo(".editorconfig"), folder.PathTo(".editorconfig"));
        folder.Write("analyzers.props", Importing("analyzers.props"));
        folder.Write("Directory.Packages.props", Importing("Directory.Packages.props"));
        folder.Write("Directory.Build.props", Importing("Directory.Build.props", "<BuildProjectReferences>false</BuildProjectReferences><RestoreRecursive>false</RestoreRecursive>"));
    }

    public string Folder => folder.PathTo("sample-rigs", "Snags");

    public string ProjectFile => Path.Combine(Folder, "Snags.csproj");

    /// <summary>What a build prints, from scratch: one that is up to date prints no warnings.</summary>
    public string Build() => DotNet.Run(Folder, "build", "--no-incremental");

    /// <summary>What the built program prints.</summary>
    public (int ExitCode, string Output) Check() =>
        DotNet.Try(Folder, Path.Combine("bin", Repository.Configuration, "net10.0", "Snags.dll"), "check");

    public string TextOf(string file) => File.ReadAllText(Path.Combine(Folder, file));

    public void Dispose() => folder.Dispose();

    private static string Importing(string file, string properties = "") =>
        $"<Project><Import Project=\"{Repository.PathTo(file)}\" /><PropertyGroup>{properties}</PropertyGroup></Project>";
}
