namespace Condyle.EndToEnd.Tests.Clients;

/// <summary>A compiler server of the tests' own, which compiles project after project in one process as it does for users, and ends with the tests.</summary>
internal static class CompilerServer
{
    private static readonly string Name = $"condyle-{Guid.NewGuid():N}";

    /// <summary>What makes a build use it.</summary>
    public static IReadOnlyDictionary<string, string> Settings { get; } = Begin();

    private static Dictionary<string, string> Begin()
    {
        AppDomain.CurrentDomain.ProcessExit += (_, _) =>
            DotNet.Run(Repository.Root, "exec", Path.Combine(Repository.CompilerFolder, "bincore", "VBCSCompiler.dll"), "-shutdown", $"-pipename:{Name}");
        return new() { ["UseSharedCompilation"] = "true", ["SharedCompilationId"] = Name };
    }
}
