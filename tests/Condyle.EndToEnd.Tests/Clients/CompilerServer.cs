namespace Condyle.EndToEnd.Tests.Clients;

/// <summary>A compiler server of one's own, which compiles several projects in one process as it does for users, and ends with the test.</summary>
internal sealed class CompilerServer : IDisposable
{
    private readonly string name = $"condyle-{Guid.NewGuid():N}";

    public IReadOnlyList<string> Arguments => ["-p:UseSharedCompilation=true", $"-p:SharedCompilationId={name}"];

    public void Dispose() =>
        DotNet.Run(Repository.Root, "exec", Path.Combine(Repository.CompilerFolder, "bincore", "VBCSCompiler.dll"), "-shutdown", $"-pipename:{name}");
}
