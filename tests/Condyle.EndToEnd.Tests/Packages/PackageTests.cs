using System.IO.Compression;
using System.Xml.Linq;
using Condyle.EndToEnd.Tests.Clients;

namespace Condyle.EndToEnd.Tests.Packages;

/// <summary>The packages themselves.</summary>
[Collection(FeedCollection.Name)]
public sealed class PackageTests(Feed feed)
{
    public static TheoryData<string, string> Names => new() { { "Condyle", "netstandard2.0" }, { "Condyle.Runtime", "net10.0" }, { "Condyle.Host", "net10.0" } };

    [Theory]
    [MemberData(nameof(Names))]
    public void A_package_has_its_page_its_licence_its_documentation_and_symbols_with_their_sources(string name, string framework)
    {
        using var package = ZipFile.OpenRead(Path.Combine(feed.Packages, $"{name}.{Feed.Version}.nupkg"));
        var about = XDocument.Load(package.GetEntry($"{name}.nuspec")!.Open()).Descendants();
        Assert.Equal("MIT", about.Single(element => element.Name.LocalName == "license").Value);
        AssertLeadsNowhere(package.GetEntry(about.Single(element => element.Name.LocalName == "readme").Value));
        Assert.NotNull(package.GetEntry("CHANGELOG.md"));
        Assert.NotNull(package.GetEntry($"lib/{framework}/{name}.xml"));

        using var symbols = ZipFile.OpenRead(Path.Combine(feed.Packages, $"{name}.{Feed.Version}.snupkg"));
        var sources = Symbols.SourcesIn(symbols.GetEntry($"lib/{framework}/{name}.pdb")!.Open());
        Assert.NotEmpty(sources);
        Assert.All(sources, source => Assert.True(source.IsEmbedded, $"{source.Path} is not among the symbols."));
    }

    /// <summary>Where a package is shown there is no repository around its page.</summary>
    private static void AssertLeadsNowhere(ZipArchiveEntry? page)
    {
        Assert.NotNull(page);
        using var reader = new StreamReader(page.Open());
        var text = reader.ReadToEnd();
        Assert.DoesNotMatch(@"\]\((?!https?:)", text);
        Assert.Contains("; in an editor, *Write out the recipe* does it", text, StringComparison.Ordinal);
        Assert.EndsWith("MIT licence. For contributors.", text.TrimEnd(), StringComparison.Ordinal);
    }

    [Fact]
    public void Packed_twice_they_are_the_same_to_the_last_bit()
    {
        string[] files = [.. Directory.GetFiles(feed.Packages).Select(file => Path.GetFileName(file)!)];
        Assert.Equal(4, files.Count(file => file.EndsWith($".{Feed.Version}.nupkg", StringComparison.Ordinal)));
        Assert.All(
            files.Where(file => file.Contains(Feed.Version, StringComparison.Ordinal)),
            file => Assert.Equal(File.ReadAllBytes(Path.Combine(feed.Packages, file)), File.ReadAllBytes(Path.Combine(feed.PackagesAgain, file))));
    }

    [Fact]
    public void The_templates_have_their_page_and_licence_and_nothing_that_was_built()
    {
        using var package = ZipFile.OpenRead(Path.Combine(feed.Packages, $"Condyle.Templates.{Feed.Version}.nupkg"));
        var about = XDocument.Load(package.GetEntry("Condyle.Templates.nuspec")!.Open()).Descendants().ToList();
        Assert.Equal("MIT", about.Single(element => element.Name.LocalName == "license").Value);
        Assert.NotNull(package.GetEntry(about.Single(element => element.Name.LocalName == "readme").Value));
        Assert.DoesNotContain(package.Entries, entry => entry.FullName.Contains("/bin/", StringComparison.Ordinal) || entry.FullName.Contains("/obj/", StringComparison.Ordinal) || entry.FullName.StartsWith("lib/", StringComparison.Ordinal));
    }

    [Fact]
    public void The_runtime_alone_bakes_a_clip_of_a_checked_rig()
    {
        feed.WriteProject("Tide/Tide.csproj", $"""
            <Project Sdk="Microsoft.NET.Sdk">
              <PropertyGroup>
                <OutputType>Exe</OutputType>
                <TargetFramework>net10.0</TargetFramework>
              </PropertyGroup>
              <ItemGroup>
                <PackageReference Include="Condyle.Runtime" Version="{Feed.Version}" />
              </ItemGroup>
            </Project>
            """);
        feed.WriteProject("Tide/Program.cs", """
            using System;
            using System.Numerics;
            using Condyle;
            using Condyle.Runtime;

            var rig = RigCompiler.Compile(Rig.Build(new Buoy()));
            var baked = Bake.Run(rig, new Clip("sway", 1).TurnAbout("sway", Axis.Z, (0, 0), (1, 30)));
            Console.WriteLine($"{baked.Name}: {baked.Times.Count} frames, {(baked.Report.Holds ? "baked is live" : "baked is not live")}");

            public sealed class Buoy : IRigDefinition
            {
                public void Define(RigDraft rig)
                {
                    var hull = rig.Skeleton("buoy").Root("hull", at: new Vector3(0, 0.5f, 0));
                    rig.Drive(hull).ByChannels(rig.Control("sway").PlacedAt(hull));
                    rig.Group("lamp");
                }
            }
            """);
        var folder = Path.Combine(feed.Projects, "Tide");
        Assert.Equal([("Program.cs", 16, "CDY1001")], BuildFinding.In(DotNet.Run(folder, "build", "--no-incremental")).Select(finding => (finding.File, finding.Line, finding.Rule)));
        Assert.Equal("sway: 31 frames, baked is live", DotNet.Run(folder, Path.Combine("bin", Repository.Configuration, "net10.0", "Tide.dll")).Trim());
    }

    [Fact]
    public void Projects_with_two_versions_in_one_solution_are_each_read_by_their_own()
    {
        const string other = "0.2.0-here";
        feed.PackAnother(other, Path.Combine("Naming", "TeamSetting.cs"), "Affix(\"_group\"", "Affix(\"_grp\"");
        WriteLibrary("Mole", Feed.Version);
        WriteLibrary("Pier", other);
        feed.WriteProject("Harbour.slnx", """<Solution><Project Path="Mole/Mole.csproj" /><Project Path="Pier/Pier.csproj" /></Solution>""");

        var found = BuildFinding.In(DotNet.Run(feed.Projects, "build", "Harbour.slnx", "--no-incremental"));
        Assert.Equal([("Mole.cs", 8, "CDY1001"), ("Pier.cs", 7, "CDY1001")], found.Select(finding => (finding.File, finding.Line, finding.Rule)));
    }

    private void WriteLibrary(string name, string version)
    {
        feed.WriteProject($"{name}/{name}.csproj", $"""
            <Project Sdk="Microsoft.NET.Sdk">
              <PropertyGroup>
                <TargetFramework>net10.0</TargetFramework>
              </PropertyGroup>
              <ItemGroup>
                <PackageReference Include="Condyle" Version="{version}" />
              </ItemGroup>
            </Project>
            """);
        feed.WriteProject($"{name}/{name}.cs", $$"""
            using Condyle;

            public sealed class {{name}} : IRigDefinition
            {
                public void Define(RigDraft rig)
                {
                    rig.Group("lamp_group");
                    rig.Group("buoy_grp");
                }
            }
            """);
    }
}
