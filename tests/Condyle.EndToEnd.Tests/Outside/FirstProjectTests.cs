using Condyle.EndToEnd.Tests.Clients;
using Condyle.Tests.Shared;

namespace Condyle.EndToEnd.Tests.Outside;

/// <summary>Does what the page on projects says of one made by hand, to the letter.</summary>
public sealed class FirstProjectTests
{
    [Fact]
    public void The_pages_first_project_builds_checks_and_bakes()
    {
        using var folder = new RigFolder();
        foreach (var block in Page.Read(Repository.Root, "docs/projects.md").Blocks.Where(block => block.File.Length > 0))
            folder.Write($"harbour/{block.File}", block.Text.Replace("path/to/condyle/analyzers.props", "../analyzers.props", StringComparison.Ordinal));

        var harbour = folder.PathTo("harbour");
        Assert.Empty(BuildFinding.In(DotNet.Run(harbour, "build")));
        var output = DotNet.Run(harbour, Path.Combine("bin", Repository.Configuration, "net10.0", "Harbour.dll"));
        Assert.StartsWith("Gull: no findings", output, StringComparison.Ordinal);
        Assert.Contains("dive: 31 frames at 30/s, 1 s", output, StringComparison.Ordinal);
        Assert.True(File.Exists(folder.PathTo("harbour", "out", "gull.glb")));
    }
}
