using Condyle.EndToEnd.Tests.Clients;

namespace Condyle.EndToEnd.Tests.Outside;

/// <summary>The Newcomers project in a folder of its own, to put a file and its rig into. It takes the projects behind it as they were built.</summary>
internal sealed class NewcomersCopy : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public NewcomersCopy()
    {
        folder.CopySources(Repository.PathTo("sample-rigs", "Newcomers"), "sample-rigs/Newcomers");
        File.Copy(Repository.PathTo(".editorconfig"), folder.PathTo(".editorconfig"));
        folder.Write("analyzers.props", Importing("analyzers.props"));
        folder.Write("Directory.Packages.props", Importing("Directory.Packages.props"));
        folder.Write("Directory.Build.props", Importing("Directory.Build.props", "<BuildProjectReferences>false</BuildProjectReferences><RestoreRecursive>false</RestoreRecursive>"));
    }

    public string this[string name] => folder.PathTo("sample-rigs", "Newcomers", name);

    public void Write(string name, string text) => folder.Write(Path.Combine("sample-rigs", "Newcomers", name), text);

    public void Build() => DotNet.Run(this["."], "build");

    /// <summary>What the built program prints.</summary>
    public string Run(params string[] arguments) =>
        DotNet.Run(this["."], [Path.Combine("bin", Repository.Configuration, "net10.0", "Newcomers.dll"), .. arguments]);

    public void Dispose() => folder.Dispose();

    private static string Importing(string file, string properties = "") =>
        $"<Project><Import Project=\"{Repository.PathTo(file)}\" /><PropertyGroup>{properties}</PropertyGroup></Project>";
}
