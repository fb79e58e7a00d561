namespace Condyle.EndToEnd.Tests;

/// <summary>
/// A folder outside the repository whose projects import the repository's analyzers.props and take the projects behind it as they were
/// built: tests run side by side, and none may build what another one uses.
/// </summary>
internal sealed class RigFolder : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public RigFolder()
    {
        File.Copy(Repository.PathTo(".editorconfig"), folder.PathTo(".editorconfig"));
        Write("analyzers.props", Importing("analyzers.props"));
        Write("Directory.Packages.props", Importing("Directory.Packages.props"));
        Write("Directory.Build.props", Importing("Directory.Build.props", "<BuildProjectReferences>false</BuildProjectReferences><RestoreRecursive>false</RestoreRecursive>"));
    }

    public string PathTo(params string[] parts) => folder.PathTo(parts);

    public void Write(string path, string text) => folder.Write(path, text);

    /// <summary>Copies one of the repository's sample projects into it.</summary>
    public void CopySample(string project) => folder.CopySources(Repository.PathTo("sample-rigs", project), Path.Combine("sample-rigs", project));

    public void Dispose() => folder.Dispose();

    private static string Importing(string file, string properties = "") =>
        $"<Project><Import Project=\"{Repository.PathTo(file)}\" /><PropertyGroup>{properties}</PropertyGroup></Project>";
}
