using System.Diagnostics;
using Condyle.Analyzers.Reporting;

namespace Condyle.Benchmarks.Projects;

/// <summary>A generated project on disk, built by the SDK as its users build it.</summary>
internal sealed class BuiltProject : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("condyle-benchmark-");

    public BuiltProject(int rigs)
    {
        foreach (var (path, source) in new HarbourProject(rigs).Files)
        {
            var file = Path.Combine(folder.FullName, path.TrimStart('/'));
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, source);
        }

        // Its own settings, so that nothing above the temporary folder counts.
        File.WriteAllText(Path.Combine(folder.FullName, "Directory.Build.props"), "<Project />");
        File.WriteAllText(Path.Combine(folder.FullName, "harbour.csproj"),
            $"""
            <Project Sdk="Microsoft.NET.Sdk">
              <PropertyGroup>
                <TargetFramework>net10.0</TargetFramework>
                <Nullable>enable</Nullable>
                <LangVersion>14</LangVersion>
              </PropertyGroup>
              <ItemGroup>
                <Reference Include="{typeof(RigDraft).Assembly.Location}" />
                <Analyzer Include="{typeof(RigDraft).Assembly.Location}" />
                <Analyzer Include="{typeof(RigAnalyzer).Assembly.Location}" />
              </ItemGroup>
            </Project>
            """);
    }

    /// <summary>Builds it anew, in a compiler process of its own, and gives back what the build prints.</summary>
    public string Build(params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet", ["build", "--no-incremental", "-p:UseSharedCompilation=false", "-nodeReuse:false", .. arguments])
        {
            WorkingDirectory = folder.FullName,
            RedirectStandardOutput = true,
        };
        // The names of the report are parsed.
        start.Environment["DOTNET_CLI_UI_LANGUAGE"] = "en";
        using var build = Process.Start(start)!;
        var output = build.StandardOutput.ReadToEnd();
        build.WaitForExit();
        return build.ExitCode == 0 ? output : throw new InvalidOperationException("The generated project doesn't build: " + output.Split('\n').FirstOrDefault(line => line.Contains(": error ", StringComparison.Ordinal)));
    }

    public void Dispose() => folder.Delete(recursive: true);
}
