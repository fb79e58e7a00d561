using Condyle.EndToEnd.Tests.Clients;

namespace Condyle.EndToEnd.Tests.Packages;

/// <summary>The packages, packed once from what was built, and a folder of projects outside the repository that take them from there.</summary>
public sealed class Feed : IDisposable
{
    /// <summary>A version that no other feed has, so that only the packages made here can be meant.</summary>
    public const string Version = "0.1.0-here";

    private readonly TemporaryFolder folder = new();

    public Feed()
    {
        folder.Write("pack/pack.proj", $"""
            <Project>
              <ItemGroup>
                <Packable Include="{Repository.PathTo("src")}/Condyle*/*.csproj" />
              </ItemGroup>
              <Target Name="Pack">
                <MSBuild Projects="@(Packable)" Targets="Pack" Properties="NoBuild=true;PackageVersion={Version};NuspecOutputPath={folder.PathTo("pack")}/" />
              </Target>
            </Project>
            """);
        DotNet.Run(folder.PathTo("pack"), "msbuild", "-target:Pack", $"-property:PackageOutputPath={Packages}/");
        DotNet.Run(folder.PathTo("pack"), "msbuild", "-target:Pack", $"-property:PackageOutputPath={PackagesAgain}/");

        // Packages made here are unpacked here. All others are there already, from building the repository; the machine's own sources stay.
        folder.Write("projects/nuget.config", $"""
            <configuration>
              <config>
                <add key="globalPackagesFolder" value="{Unpacked}" />
              </config>
              <packageSources>
                <add key="here" value="{Packages}" />
              </packageSources>
              <fallbackPackageFolders>
                <add key="machine" value="{Repository.PackageFolder}" />
              </fallbackPackageFolders>
            </configuration>
            """);
    }

    public string Packages => folder.PathTo("packages");

    /// <summary>The same, packed once more.</summary>
    public string PackagesAgain => folder.PathTo("packages-again");

    /// <summary>Where projects unpack the packages that are made here.</summary>
    public string Unpacked => folder.PathTo("unpacked");

    public string Projects => folder.PathTo("projects");

    public void WriteProject(string path, string text) => folder.Write(Path.Combine("projects", path), text);

    /// <summary>Packs another version of the library and its analyzers from sources that are changed on the way.</summary>
    public void PackAnother(string version, string file, string old, string @new)
    {
        foreach (var part in new[] { "Condyle", "Condyle.Analyzers", "Condyle.CodeFixes" })
            folder.CopySources(Repository.PathTo("src", part), Path.Combine("sources", "src", part));
        foreach (var around in new[] { "Directory.Build.props", "Directory.Packages.props", "README.md", "CHANGELOG.md", Path.Combine("src", "Directory.Build.targets") })
            File.Copy(Repository.PathTo(around), folder.PathTo("sources", around));
        var changed = folder.PathTo("sources", "src", "Condyle", file);
        var text = File.ReadAllText(changed);
        Assert.Contains(old, text, StringComparison.Ordinal);
        File.WriteAllText(changed, text.Replace(old, @new, StringComparison.Ordinal));
        // As from a fresh clone: nothing is restored or built there.
        DotNet.Run(folder.PathTo("sources", "src", "Condyle"), "pack", $"-p:Version={version}", "-p:RunAnalyzers=false", "--configuration", Repository.Configuration, "--output", Packages);
    }

    public void Dispose() => folder.Dispose();
}
