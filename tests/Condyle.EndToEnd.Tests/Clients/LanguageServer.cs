using System.Diagnostics;
using System.Text.Json;
using System.Text.Json.Nodes;
using StreamJsonRpc;

namespace Condyle.EndToEnd.Tests.Clients;

/// <summary>A client of the language server that many editors run for C#, over its standard input and output. Files are named as in the project's folder.</summary>
internal sealed class LanguageServer : ITypedInto, IDisposable
{
    private const string Tool = "csharp-ls";
    private const string Version = "0.28.0";

    private static readonly string ToolFolder = Path.Combine(AppContext.BaseDirectory, Tool);
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    private readonly Process process;
    private readonly JsonRpc connection;
    private readonly string folder;
    private readonly Dictionary<string, (int Version, string Text)> opened = [];

    private LanguageServer(Process process, string folder)
    {
        this.process = process;
        this.folder = folder;
        connection = new JsonRpc(new HeaderDelimitedMessageHandler(process.StandardInput.BaseStream, process.StandardOutput.BaseStream, new SystemTextJsonFormatter()));
        connection.AddLocalRpcTarget(new Answers(), new JsonRpcTargetOptions { UseSingleObjectParameterDeserialization = true });
        connection.StartListening();
    }

    /// <summary>Why the server can't be run here; none if it can.</summary>
    public static string? WhyNotInstalled()
    {
        if (Directory.Exists(ToolFolder))
            return null;
        var (exitCode, output) = DotNet.Try(AppContext.BaseDirectory, "tool", "install", Tool, "--version", Version, "--tool-path", ToolFolder);
        return exitCode == 0 ? null : $"The language server {Tool} {Version} can't be installed: {output.ReplaceLineEndings(" ")}";
    }

    /// <summary>Starts the server on a folder with one project, and waits until that is loaded.</summary>
    public static async Task<LanguageServer> StartAsync(string folder)
    {
        var start = new ProcessStartInfo(Path.Combine(ToolFolder, Tool))
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["Configuration"] = Repository.Configuration;
        var process = Process.Start(start)!;
        process.ErrorDataReceived += (_, _) => { };
        process.BeginErrorReadLine();
        var server = new LanguageServer(process, folder);
        await server.connection.InvokeWithParameterObjectAsync<JsonNode>("initialize", new
        {
            processId = Environment.ProcessId,
            rootUri = new Uri(folder).AbsoluteUri,
            workspaceFolders = new[] { new { uri = new Uri(folder).AbsoluteUri, name = "rigs" } },
            capabilities = new { workspace = new { configuration = true }, textDocument = new { diagnostic = new { dynamicRegistration = true }, synchronization = new { } } },
        }).WaitAsync(Patience);
        await server.connection.NotifyWithParameterObjectAsync("initialized", new { });
        return server;
    }

    public async Task TypeAsync(string file, string over, string text)
    {
        await OpenAsync(file);
        var (version, before) = opened[file];
        var at = before.IndexOf(over, StringComparison.Ordinal);
        Assert.True(at >= 0, $"'{over}' is not in {file}.");
        opened[file] = (version + 1, before[..at] + text + before[(at + over.Length)..]);
        await connection.NotifyWithParameterObjectAsync("textDocument/didChange", new
        {
            textDocument = new { uri = UriOf(file), version = version + 1 },
            contentChanges = new[] { new { range = new { start = PositionOf(before, at), end = PositionOf(before, at + over.Length) }, text } },
        });
    }

    public async Task<IReadOnlyList<Squiggle>> SquigglesInAsync(string file)
    {
        await OpenAsync(file);
        var report = await connection.InvokeWithParameterObjectAsync<JsonNode>("textDocument/diagnostic", new { textDocument = new { uri = UriOf(file) } }).WaitAsync(Patience);
        var text = opened[file].Text;
        return [.. report["items"]!.AsArray()
            .Select(item => (Rule: item!["code"]?.ToString() ?? "", Start: OffsetOf(text, item["range"]!["start"]!), End: OffsetOf(text, item["range"]!["end"]!)))
            .Where(item => item.Rule.StartsWith("CDY", StringComparison.Ordinal))
            .OrderBy(item => item.Start)
            .Select(item => new Squiggle(item.Rule, text[item.Start..item.End]))];
    }

    public void Dispose()
    {
        connection.Dispose();
        if (!process.HasExited)
            process.Kill(entireProcessTree: true);
        process.Dispose();
    }

    private async Task OpenAsync(string file)
    {
        if (opened.ContainsKey(file))
            return;
        var text = await File.ReadAllTextAsync(Path.Combine(folder, file));
        opened[file] = (1, text);
        await connection.NotifyWithParameterObjectAsync("textDocument/didOpen", new { textDocument = new { uri = UriOf(file), languageId = "csharp", version = 1, text } });
    }

    private string UriOf(string file) => new Uri(Path.Combine(folder, file)).AbsoluteUri;

    private static object PositionOf(string text, int offset) => new { line = text.AsSpan(0, offset).Count('\n'), character = offset - text.LastIndexOf('\n', Math.Max(0, offset - 1)) - 1 };

    private static int OffsetOf(string text, JsonNode position)
    {
        var offset = 0;
        for (var line = position["line"]!.GetValue<int>(); line > 0; line--)
            offset = text.IndexOf('\n', offset) + 1;
        return offset + position["character"]!.GetValue<int>();
    }

    /// <summary>What an editor answers when the server asks.</summary>
    private sealed class Answers
    {
        // Without it the server runs no analyzers.
        [JsonRpcMethod("workspace/configuration", UseSingleObjectParameterDeserialization = true)]
        public static object[] Configuration(JsonElement asked) =>
            [.. asked.GetProperty("items").EnumerateArray().Select(_ => (object)new { analyzersEnabled = true })];

        [JsonRpcMethod("client/registerCapability", UseSingleObjectParameterDeserialization = true)]
        public static void Register(JsonElement _)
        {
        }

        [JsonRpcMethod("window/workDoneProgress/create", UseSingleObjectParameterDeserialization = true)]
        public static void Progress(JsonElement _)
        {
        }
    }
}
