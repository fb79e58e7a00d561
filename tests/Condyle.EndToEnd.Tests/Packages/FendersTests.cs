using System.Text.Json.Nodes;
using Condyle.EndToEnd.Tests.Clients;
using Condyle.Tests.Shared;

namespace Condyle.EndToEnd.Tests.Packages;

/// <summary>What a team sees of three slips, in every place where code is checked, with nothing but the package.</summary>
[Collection(FeedCollection.Name)]
public sealed class FendersTests(Fenders fenders) : IClassFixture<Fenders>
{
    private static readonly string[] Slips = ["CDY1001", "CDY2001", "CDY3001"];

    [Fact]
    public void A_build_and_the_program_find_them()
    {
        Assert.Equal(Slips, BuildFinding.In(fenders.Printed).Select(finding => finding.Rule).Order());
        Assert.All(Slips, rule => Assert.Contains(rule, fenders.Check().Output, StringComparison.Ordinal));
        Assert.Equal(1, fenders.Check().ExitCode);
    }

    [Fact]
    public void The_delivered_file_goes_along_and_nothing_of_the_compilers_does()
    {
        Assert.True(File.Exists(Path.Combine(fenders.ProgramFolder, "delivered", "fenders.gltf")), "The delivered file isn't beside the program.");
        Assert.DoesNotContain(Directory.EnumerateFiles(fenders.ProgramFolder, "*", SearchOption.AllDirectories).Select(Path.GetFileName), IsOfCompilers);
    }

    [Fact]
    public void They_are_in_the_file_for_code_hosts()
    {
        var log = JsonNode.Parse(File.ReadAllText(fenders.Sarif))!;
        Assert.Equal("2.1.0", log["version"]!.GetValue<string>());
        var ours = log["runs"]![0]!["results"]!.AsArray().Where(result => Slips.Contains(result!["ruleId"]!.GetValue<string>())).ToList();
        Assert.Equal(Slips, ours.Select(result => result!["ruleId"]!.GetValue<string>()).Order());
        Assert.All(ours, result => Assert.Equal("warning", result!["level"]!.GetValue<string>()));
        Assert.All(ours, result => Assert.EndsWith("/" + Fenders.RigFile, result!["locations"]![0]!["physicalLocation"]!["artifactLocation"]!["uri"]!.GetValue<string>(), StringComparison.Ordinal));
    }

    /// <summary>Against the schema of SARIF 2.1.0.</summary>
    [SkippableFact]
    public void The_file_for_code_hosts_is_valid() => Assert.Equal("[]", OutsideChecks.Run("sarif.mjs", null, fenders.Sarif).Trim());

    [SkippableFact]
    public async Task A_language_server_shows_them()
    {
        var whyNot = LanguageServer.WhyNotInstalled();
        Skip.If(whyNot is not null, whyNot);
        using var server = await LanguageServer.StartAsync(fenders.Folder);
        Assert.Equal(Slips, (await server.SquigglesInAsync(Fenders.RigFile)).Select(squiggle => squiggle.Rule).Order());
        await server.TypeAsync(Fenders.RigFile, "\"still_group\"", "\"still_grp\"");
        Assert.Equal(Slips[1..], (await server.SquigglesInAsync(Fenders.RigFile)).Select(squiggle => squiggle.Rule).Order());
    }

    [Fact]
    public void A_format_repairs_them()
    {
        var file = Path.Combine(fenders.Folder, Fenders.RigFile);
        DotNet.Run(fenders.Folder, ["format", "analyzers", "--severity", "info", "--diagnostics", .. Slips]);
        Assert.Equal(
            FendersCode.Rig
                .Replace("\"still_group\"", "\"still_group_grp\"", StringComparison.Ordinal)
                .Replace("ByMatrix(quay)", "ByChannels(quay)", StringComparison.Ordinal)
                .Replace("From(rest, swell)", "From(rest, swell.Inverse)", StringComparison.Ordinal),
            File.ReadAllText(file));
        File.WriteAllText(file, FendersCode.Rig);
    }

    [Fact]
    public void A_setting_that_changes_reaches_compiler_and_program_though_nothing_else_has_to_be_built()
    {
        Assert.DoesNotContain("CDY1001", DotNet.Run(fenders.Folder, "build", "-p:CondyleGroupSuffix=_group"), StringComparison.Ordinal);
        Assert.DoesNotContain("CDY1001", fenders.Check().Output, StringComparison.Ordinal);
        Assert.Contains("CDY1001", DotNet.Run(fenders.Folder, "build"), StringComparison.Ordinal);
        Assert.Contains("CDY1001", fenders.Check().Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_setting_that_cannot_be_is_a_warning_and_its_rule_goes_by_the_default()
    {
        // Into folders of its own, so that what was built stays.
        var printed = fenders.Build("-p:CondyleGroupSuffix=my group", "-p:CondyleNamePattern=[a-z", "-p:IntermediateOutputPath=obj/wrong/", "-p:OutDir=bin/wrong/");
        Assert.Contains("warning CDY9201: CondyleGroupSuffix is 'my group', and '_group' is used instead: give letters, digits, '_', '-' and '.'.", printed, StringComparison.Ordinal);
        Assert.Contains("warning CDY9201: CondyleNamePattern is '[a-z', which is no pattern as its end lacks the ']' of a set", printed, StringComparison.Ordinal);
        Assert.DoesNotContain("CDY1001", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void A_family_can_be_made_to_fail_the_build()
    {
        var settings = Path.Combine(fenders.Folder, ".editorconfig");
        var before = File.ReadAllText(settings);
        File.WriteAllText(settings, before + "dotnet_analyzer_diagnostic.category-Names.severity = error\n");
        var (exitCode, printed) = DotNet.Try(fenders.Folder, "build", "--no-incremental");
        File.WriteAllText(settings, before);
        Assert.Equal(1, exitCode);
        Assert.Contains("error CDY1001: ", printed, StringComparison.Ordinal);
        Assert.DoesNotContain("error CDY2001: ", printed, StringComparison.Ordinal);
    }

    private static bool IsOfCompilers(string? file) =>
        file is not null && (file.StartsWith("Condyle.Analyzers", StringComparison.Ordinal) || file.StartsWith("Condyle.CodeFixes", StringComparison.Ordinal) || file.StartsWith("Microsoft.CodeAnalysis", StringComparison.Ordinal));
}
