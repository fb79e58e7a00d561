using Condyle.EndToEnd.Tests.Clients;

namespace Condyle.EndToEnd.Tests.Packages;

/// <summary>The project of a team outside: an empty folder, a package, and a rig with three slips. Built once.</summary>
public sealed class Fenders
{
    public const string RigFile = "FendersRig.cs";

    private static readonly string Output = Path.Combine("bin", Repository.Configuration, "net10.0");

    public Fenders(Feed feed)
    {
        ArgumentNullException.ThrowIfNull(feed);
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
        feed.WriteProject("Fenders/delivered/fenders.gltf", FendersCode.Delivered);
        feed.WriteProject($"Fenders/{RigFile}", FendersCode.Rig);
        Folder = Path.Combine(feed.Projects, "Fenders");
        Printed = Build($"-p:ErrorLog={Sarif}%2Cversion=2.1");
    }

    public string Folder { get; }

    /// <summary>Where its program lies.</summary>
    public string ProgramFolder => Path.Combine(Folder, Output);

    /// <summary>What the build wrote for programs.</summary>
    public string Sarif => Path.Combine(Folder, "obj", "found.sarif");

    /// <summary>What the build printed.</summary>
    public string Printed { get; }

    public string Build(params string[] arguments) => DotNet.Run(Folder, ["build", "--no-incremental", .. arguments]);

    /// <summary>What the built program finds.</summary>
    public (int ExitCode, string Output) Check() => DotNet.Try(Folder, Path.Combine(ProgramFolder, "Fenders.dll"), "check");
}
