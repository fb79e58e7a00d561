using Condyle.EndToEnd.Tests.Clients;
using Microsoft.CodeAnalysis;

namespace Condyle.EndToEnd.Tests.Snags;

public sealed class EditorTests(EditorTests.Opened opened) : IClassFixture<EditorTests.Opened>
{
    public static TheoryData<string> Rules => [.. Slip.All.Select(slip => slip.Rule)];

    [Theory]
    [MemberData(nameof(Rules))]
    public async Task A_slip_shows_as_it_is_typed_and_goes_with_the_fix_that_is_offered_at_it(string rule)
    {
        var slip = Slip.All.Single(slip => slip.Rule == rule);
        var editor = opened.Editor;
        await editor.TypeAsync(slip.File, over: slip.Wrong, slip.Right);
        Assert.Empty(await editor.SquigglesAsync(slip.File));

        await editor.TypeAsync(slip.File, over: slip.Right, slip.Wrong);
        var squiggle = Assert.Single(await editor.SquigglesAsync(slip.File));
        var expected = slip.FindingIn(await editor.TextOfAsync(slip.File));
        var start = squiggle.Location.GetLineSpan().StartLinePosition;
        Assert.Equal((rule, expected.Line, expected.Column), (squiggle.Id, start.Line + 1, start.Character + 1));
        Assert.Equal(DiagnosticSeverity.Warning, squiggle.Severity);

        await editor.ApplyAsync(Assert.Single(await editor.FixesAsync(slip.File, squiggle)));
        Assert.Contains(slip.Right, await editor.TextOfAsync(slip.File), StringComparison.Ordinal);
        Assert.Empty(await editor.SquigglesAsync(slip.File));
    }

    /// <summary>The project, opened once.</summary>
    public sealed class Opened : IAsyncLifetime
    {
        private readonly SnagsCopy copy = new();

        internal Editor Editor { get; private set; } = null!;

        public async Task InitializeAsync()
        {
            DotNet.Run(copy.Folder, "restore");
            Editor = await Editor.OpenAsync(copy.ProjectFile);
        }

        public Task DisposeAsync()
        {
            Editor.Dispose();
            copy.Dispose();
            return Task.CompletedTask;
        }
    }
}
