using Condyle.EndToEnd.Tests.Clients;

namespace Condyle.EndToEnd.Tests.Outside;

/// <summary>The Newcomers project in a folder of its own, to put a file and its rig into. It takes the projects behind it as they were built.</summary>
internal sealed class NewcomersCopy : IDisposable
{
    private readonly RigFolder folder = new();

    public NewcomersCopy() => folder.CopySample("Newcomers");

    public string this[string name] => folder.PathTo("sample-rigs", "Newcomers", name);

    public void Write(string name, string text) => folder.Write(Path.Combine("sample-rigs", "Newcomers", name), text);

    public void Build() => DotNet.Run(this["."], "build");

    /// <summary>What the built program prints.</summary>
    public string Run(params string[] arguments) =>
        DotNet.Run(this["."], [Path.Combine("bin", Repository.Configuration, "net10.0", "Newcomers.dll"), .. arguments]);

    public void Dispose() => folder.Dispose();
}
