using Condyle.EndToEnd.Tests.Clients;
using Condyle.Tests.Shared;

namespace Condyle.EndToEnd.Tests.Snags;

public sealed class BuildTests(BuildTests.Built built) : IClassFixture<BuildTests.Built>
{
    public const string Command = "dotnet build sample-rigs/Snags --no-incremental";

    private static readonly string[] NoFindings = ["BlendWithoutInverse: no findings", "GroupWithoutSuffix: no findings", "MatrixOntoJoint: no findings"];

    [Fact]
    public void A_build_prints_each_slip_at_the_text_that_is_to_blame_and_nothing_else() =>
        Assert.Equal(Slip.All.Select(slip => slip.FindingIn(built.Copy.TextOf(slip.File))), BuildFinding.In(built.Output));

    [Fact]
    public void The_front_page_shows_what_the_build_prints_and_how_it_is_repaired()
    {
        var page = Page.Read(Repository.Root, "README.md").Blocks;
        var shown = page.Single(block => block.Notes.TryGetValue("prints", out var command) && command == Command);
        Assert.Equal(Slip.All.Count, shown.Text.Trim().Split('\n').Count(line => built.Output.Contains(line, StringComparison.Ordinal)));

        var repair = page.Single(block => block.Kind == "diff");
        Assert.All(Slip.All, slip =>
        {
            var line = built.Copy.TextOf(slip.File).Split('\n').Single(line => line.Contains(slip.Wrong, StringComparison.Ordinal));
            Assert.Contains($"-{line}\n+{line.Replace(slip.Wrong, slip.Right, StringComparison.Ordinal)}\n", repair.Text, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void The_program_finds_in_the_same_files_what_the_build_finds()
    {
        var (exitCode, output) = built.Copy.Check();
        Assert.Equal(1, exitCode);
        foreach (var slip in Slip.All)
            Assert.Matches($@"{slip.File}\(\d+\): \w+ {slip.Rule}: ", output);
    }

    [Fact]
    public void Dotnet_format_repairs_every_slip()
    {
        using var copy = new SnagsCopy();
        DotNet.Run(copy.Folder, ["format", "analyzers", "--severity", "info", "--diagnostics", .. Slip.All.Select(slip => slip.Rule)]);

        foreach (var slip in Slip.All)
            Assert.Equal(built.Copy.TextOf(slip.File).Replace(slip.Wrong, slip.Right, StringComparison.Ordinal), copy.TextOf(slip.File));
        Assert.Empty(BuildFinding.In(copy.Build()));
        var (exitCode, output) = copy.Check();
        Assert.Equal(0, exitCode);
        Assert.Equal(NoFindings, output.Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries));
    }

    /// <summary>The project as it is, built once.</summary>
    public sealed class Built : IDisposable
    {
        public Built() => Output = Copy.Build();

        public SnagsCopy Copy { get; } = new();

        public string Output { get; }

        public void Dispose() => Copy.Dispose();
    }
}
