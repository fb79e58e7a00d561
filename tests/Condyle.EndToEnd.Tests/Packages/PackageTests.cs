using Condyle.EndToEnd.Tests.Clients;

namespace Condyle.EndToEnd.Tests.Packages;

public sealed class PackageTests(Feed feed) : IClassFixture<Feed>
{
    private static readonly string Output = Path.Combine("bin", Repository.Configuration, "net10.0");

    [Fact]
    public void One_package_brings_library_analyzers_settings_and_program()
    {
        feed.WriteProject("Fenders/Fenders.csproj", $"""
            <Project Sdk="Microsoft.NET.Sdk">
              <PropertyGroup>
                <OutputType>Exe</OutputType>
                <TargetFramework>net10.0</TargetFramework>
                <ImplicitUsings>enable</ImplicitUsings>
                <CondyleGroupSuffix>_grp</CondyleGroupSuffix>
              </PropertyGroup>
              <ItemGroup>
                <PackageReference Include="Condyle.Host" Version="{Feed.Version}" />
                <CondyleSkeleton Include="delivered/fenders.gltf" />
              </ItemGroup>
            </Project>
            """);
        feed.WriteProject("Fenders/.editorconfig", "[*.cs]\ndotnet_diagnostic.CDY2001.severity = warning\ndotnet_diagnostic.CDY3001.severity = warning\n");
        feed.WriteProject("Fenders/Program.cs", "return Condyle.Host.RigProgram.Run(args);\n");
        feed.WriteProject("Fenders/delivered/fenders.gltf", FendersRig.Delivered);
        feed.WriteProject("Fenders/FendersRig.cs", FendersRig.Code);
        var folder = Path.Combine(feed.Projects, "Fenders");

        Assert.Equal(["CDY1001", "CDY2001", "CDY3001"], BuildFinding.In(DotNet.Run(folder, "build", "--no-incremental")).Select(finding => finding.Rule).Order());
        Assert.True(File.Exists(Path.Combine(folder, Output, "delivered", "fenders.gltf")), "The delivered file isn't beside the program.");
        Assert.DoesNotContain(Directory.EnumerateFiles(Path.Combine(folder, Output), "*", SearchOption.AllDirectories).Select(Path.GetFileName), IsOfCompilers);
        Assert.All(["CDY1001", "CDY2001", "CDY3001"], rule => Assert.Contains(rule, Check(folder), StringComparison.Ordinal));

        // A setting that changes reaches the compiler and the program, also where nothing else has to be built.
        Assert.DoesNotContain("CDY1001", DotNet.Run(folder, "build", "-p:CondyleGroupSuffix=_group"), StringComparison.Ordinal);
        Assert.DoesNotContain("CDY1001", Check(folder), StringComparison.Ordinal);
    }

    [Fact]
    public void Projects_with_two_versions_in_one_solution_are_each_read_by_their_own()
    {
        const string other = "0.2.0-here";
        feed.PackAnother(other, Path.Combine("Naming", "Conventions.cs"), "= \"_group\"", "= \"_grp\"");
        WriteLibrary("Mole", Feed.Version);
        WriteLibrary("Pier", other);
        feed.WriteProject("Harbour.slnx", """<Solution><Project Path="Mole/Mole.csproj" /><Project Path="Pier/Pier.csproj" /></Solution>""");

        using var compiler = new CompilerServer();
        var found = BuildFinding.In(DotNet.Run(feed.Projects, ["build", "Harbour.slnx", "--no-incremental", .. compiler.Arguments]));
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

    private static string Check(string folder) => DotNet.Try(folder, Path.Combine(Output, "Fenders.dll"), "check").Output;

    private static bool IsOfCompilers(string? file) =>
        file is not null && (file.StartsWith("Condyle.Analyzers", StringComparison.Ordinal) || file.StartsWith("Condyle.CodeFixes", StringComparison.Ordinal) || file.StartsWith("Microsoft.CodeAnalysis", StringComparison.Ordinal));
}
