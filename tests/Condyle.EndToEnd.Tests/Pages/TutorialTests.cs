using Condyle.EndToEnd.Tests.Clients;
using Condyle.EndToEnd.Tests.Packages;
using Condyle.Tests.Shared;

namespace Condyle.EndToEnd.Tests.Pages;

/// <summary>Follows the tutorial to the letter, in an empty folder with the packages: writes its files, runs its commands, and sees what it shows.</summary>
[Collection(FeedCollection.Name)]
public sealed class TutorialTests(Feed feed)
{
    /// <summary>The page that is followed.</summary>
    public const string PagePath = "docs/tutorial.md";

    private readonly string start = Path.Combine(feed.Projects, "tutorial");

    [SkippableFact]
    public void Who_follows_the_tutorial_sees_what_it_shows()
    {
        Skip.If(OperatingSystem.IsWindows(), "Its commands are run by a shell.");
        PreparePackages();
        var folder = start;
        var (exitCode, printed) = (0, "");
        var steps = Page.Read(Repository.Root, PagePath).Blocks;
        foreach (var (at, step) in steps.Index())
        {
            switch (step.Kind)
            {
                case "sh":
                    (exitCode, printed, folder) = Run(folder, step.Text);
                    Assert.True(exitCode == 0 || steps[at + 1].Text.Contains(": error ", StringComparison.Ordinal), $"{step.Text}{printed}");
                    break;
                case "text":
                    ShownOutput.IsIn(printed, step.Text);
                    break;
                case "diff":
                    Assert.Equal(step.Change(steps.Take(at).Last(written => written.File == step.File).Text), File.ReadAllText(Path.Combine(folder, step.File)));
                    break;
                default:
                    Assert.False(step.File.Length == 0, $"The page doesn't say what this is written to:\n{step.Text}");
                    File.WriteAllText(Path.Combine(folder, step.File), step.Text);
                    break;
            }
        }

        Assert.True(File.Exists(Path.Combine(folder, "out", "arm.glb")));
    }

    /// <summary>The folder <c>packages</c> in an otherwise empty one, as the page asks for; all other packages are those of the machine.</summary>
    private void PreparePackages()
    {
        Directory.CreateDirectory(Path.Combine(start, "packages"));
        foreach (var package in Directory.GetFiles(feed.Packages, $"*.{Feed.Version}.nupkg"))
            File.Copy(package, Path.Combine(start, "packages", Path.GetFileName(package)));
        feed.WriteProject("tutorial/nuget.config", "<configuration><packageSources><clear /></packageSources></configuration>");
    }

    /// <summary>Runs commands where the ones before have led to.</summary>
    private (int ExitCode, string Printed, string Folder) Run(string folder, string commands)
    {
        var ledTo = Path.Combine(start, "led-to");
        var (exitCode, printed) = DotNet.TryScript(folder, "-c", $"trap 'pwd > \"{ledTo}\"' EXIT; set -e\n{commands}");
        return (exitCode, printed, File.ReadAllText(ledTo).Trim());
    }
}
