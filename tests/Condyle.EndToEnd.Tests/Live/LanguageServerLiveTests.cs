using Condyle.EndToEnd.Tests.Clients;
using Xunit.Abstractions;

namespace Condyle.EndToEnd.Tests.Live;

/// <summary>In a language server as editors run it.</summary>
public sealed class LanguageServerLiveTests(LanguageServerLiveTests.Opened opened, ITestOutputHelper output) : LiveTests, IClassFixture<LanguageServerLiveTests.Opened>
{
    [SkippableFact]
    public async Task Squiggles_are_there_while_one_types()
    {
        var client = await ClientAsync();
        foreach (var (file, over, text) in new[]
        {
            (Fleet.Rig(9), "\"hold_group\"", "\"hold\""),
            (Fleet.Names, "_{number}_group", "_{number}_part"),
            (Fleet.Unrelated, "12.4", "12.5"),
        })
        {
            var latencies = new List<double>();
            for (var i = 0; i < 10; i++)
            {
                var watch = System.Diagnostics.Stopwatch.StartNew();
                await client.TypeAsync(file, i % 2 == 0 ? over : text, i % 2 == 0 ? text : over);
                await client.SquigglesInAsync(file);
                latencies.Add(watch.Elapsed.TotalMilliseconds);
            }

            latencies.Sort();
            output.WriteLine($"{file}: an edit and its squiggles take {latencies[0]:0} to {latencies[^1]:0} ms, {latencies[latencies.Count / 2]:0} ms in the middle");
        }
    }

    private protected override async Task<ITypedInto> ClientAsync()
    {
        Skip.If(opened.WhyNot is not null, opened.WhyNot);
        return await opened.Server;
    }

    /// <summary>The server with the project, started once.</summary>
    public sealed class Opened : IAsyncLifetime
    {
        private readonly Fleet fleet = new();

        internal string? WhyNot { get; private set; }

        internal Task<LanguageServer> Server { get; private set; } = null!;

        public Task InitializeAsync()
        {
            WhyNot = LanguageServer.WhyNotInstalled();
            if (WhyNot is null)
            {
                DotNet.Run(fleet.Folder, "restore");
                Server = LanguageServer.StartAsync(fleet.Folder);
            }

            return Task.CompletedTask;
        }

        public async Task DisposeAsync()
        {
            if (WhyNot is null)
                (await Server).Dispose();
            fleet.Dispose();
        }
    }
}
