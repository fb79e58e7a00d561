using Condyle.EndToEnd.Tests.Clients;

namespace Condyle.EndToEnd.Tests.Live;

/// <summary>In a host like an editor's, which asks for one file at a time.</summary>
public sealed class EditorLiveTests(EditorLiveTests.Opened opened) : LiveTests, IClassFixture<EditorLiveTests.Opened>
{
    [Fact]
    public void A_build_reads_all_rigs_that_share_a_helper()
    {
        var finding = Assert.Single(BuildFinding.In(opened.Fleet.Build()));

        Assert.Equal((Fleet.Helpers, "CDY1001"), (finding.File, finding.Rule));
    }

    private protected override Task<ITypedInto> ClientAsync() => Task.FromResult<ITypedInto>(opened.Editor);

    /// <summary>The project, opened once.</summary>
    public sealed class Opened : IAsyncLifetime
    {
        internal Fleet Fleet { get; } = new();

        internal Editor Editor { get; private set; } = null!;

        public async Task InitializeAsync()
        {
            DotNet.Run(Fleet.Folder, "restore");
            Editor = await Editor.OpenAsync(Fleet.ProjectFile);
        }

        public Task DisposeAsync()
        {
            Editor.Dispose();
            Fleet.Dispose();
            return Task.CompletedTask;
        }
    }
}
