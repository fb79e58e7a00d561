using Condyle.EndToEnd.Tests.Clients;

namespace Condyle.EndToEnd.Tests.Snags;

public sealed class BuildTests(BuildTests.Built built) : IClassFixture<BuildTests.Built>
{
    private static readonly string[] NoFindings = ["BlendWithoutInverse: no findings", "GroupWithoutSuffix: no findings", "MatrixOntoJoint: no findings"];

    [Fact]
    public void A_build_prints_each_slip_at_the_text_that_is_to_blame_and_nothing_else() =>
        Assert.Equal(Slip.All.Select(slip => slip.FindingIn(built.Copy.TextOf(slip.File))), BuildFinding.In(built.Output));

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
