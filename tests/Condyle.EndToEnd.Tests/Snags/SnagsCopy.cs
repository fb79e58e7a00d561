using Condyle.EndToEnd.Tests.Clients;

namespace Condyle.EndToEnd.Tests.Snags;

/// <summary>The Snags project in a folder of its own.</summary>
public sealed class SnagsCopy : IDisposable
{
    private readonly RigFolder folder = new();

    public SnagsCopy() => folder.CopySample("Snags");

    public string Folder => folder.PathTo("sample-rigs", "Snags");

    public string ProjectFile => Path.Combine(Folder, "Snags.csproj");

    /// <summary>What a build prints, from scratch: one that is up to date prints no warnings.</summary>
    public string Build() => DotNet.Run(Folder, "build", "--no-incremental");

    /// <summary>What the built program prints.</summary>
    public (int ExitCode, string Output) Check() =>
        DotNet.Try(Folder, Path.Combine("bin", Repository.Configuration, "net10.0", "Snags.dll"), "check");

    public string TextOf(string file) => File.ReadAllText(Path.Combine(Folder, file));

    public void Dispose() => folder.Dispose();
}
