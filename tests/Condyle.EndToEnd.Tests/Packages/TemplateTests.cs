using System.Text.RegularExpressions;
using Condyle.EndToEnd.Tests.Clients;
using Condyle.Tests.Shared;

namespace Condyle.EndToEnd.Tests.Packages;

/// <summary>A rig project made by <c>dotnet new</c>, with a name that is none in C#: what stands in it works as it is.</summary>
[Collection(FeedCollection.Name)]
public sealed class TemplateTests(Feed feed)
{
    private const string Name = "quay-side";

    [SkippableFact]
    public void A_new_project_passes_its_own_check_until_a_slip_is_put_in()
    {
        Skip.If(OperatingSystem.IsWindows(), "Its check is a shell script.");
        var hive = Path.Combine(feed.Projects, "hive");
        DotNet.Run(feed.Projects, "new", "install", $"Condyle.Templates@{Feed.Version}", "--add-source", feed.Packages, "--debug:custom-hive", hive);
        DotNet.Run(feed.Projects, "new", "condyle-rig", "--name", Name, "--debug:custom-hive", hive);

        var (exitCode, printed) = Check();
        Assert.True(exitCode == 0, printed);
        Assert.Contains("0 Warning(s)", printed, StringComparison.Ordinal);
        Assert.Matches("Passed! .*Failed: +0, Passed: +6,", printed);
        Assert.Contains("Deckhand: no findings", printed, StringComparison.Ordinal);
        Assert.Contains("haul: 61 frames", printed, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(feed.Projects, Name, "out", "deckhand.glb")));

        PutSlipIn();
        (exitCode, printed) = Check();
        Assert.NotEqual(0, exitCode);
        Assert.Equal([("Deckhand.cs", "CDY1001")], BuildFinding.In(printed).Select(finding => (finding.File, finding.Rule)));
        Assert.Contains(Shown(), printed, StringComparison.Ordinal);
    }

    /// <summary>Against gltf-validator, the validator of the standard.</summary>
    [SkippableFact]
    public void The_deckhand_is_a_file_without_fault()
    {
        var report = OutsideChecks.Validate(Repository.PathTo("src", "Condyle.Templates", "condyle-rig", "rigs", "deckhand.gltf"));
        Assert.Empty(report.Messages);
    }

    private (int ExitCode, string Printed) Check() => DotNet.TryScript(Path.Combine(feed.Projects, Name), "ci/check.sh");

    /// <summary>As the project's own page says.</summary>
    private void PutSlipIn()
    {
        var rig = Path.Combine(feed.Projects, Name, "rigs", "Deckhand.cs");
        File.WriteAllText(rig, File.ReadAllText(rig).Replace("""rig.Group("systems_group")""", """rig.Group("systems")""", StringComparison.Ordinal));
    }

    /// <summary>What the project's page shows of the finding; the check makes an error of the warning.</summary>
    private string Shown() => Regex.Match(File.ReadAllText(Path.Combine(feed.Projects, Name, "README.md")), "^warning (CDY1001: .*)$", RegexOptions.Multiline).Groups[1].Value;
}
