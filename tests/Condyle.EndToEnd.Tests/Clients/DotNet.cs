using System.Diagnostics;
using System.Text;

namespace Condyle.EndToEnd.Tests.Clients;

/// <summary>Runs the SDK's command line as a user does, without leaving servers behind.</summary>
internal static class DotNet
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(10);

    private static readonly Dictionary<string, string> Surroundings = new()
    {
        ["DOTNET_CLI_UI_LANGUAGE"] = "en",
        ["DOTNET_CLI_USE_MSBUILD_SERVER"] = "0",
        ["DOTNET_NOLOGO"] = "1",
        // Programs that end after one build never get back what they count for later optimisation.
        ["DOTNET_TieredPGO"] = "0",
        ["MSBUILDDISABLENODEREUSE"] = "1",
        ["Configuration"] = Repository.Configuration,
    };

    /// <summary>Runs a command and expects it to succeed.</summary>
    public static string Run(string folder, params string[] arguments)
    {
        var (exitCode, output) = Try(folder, arguments);
        Assert.True(exitCode == 0, $"dotnet {string.Join(' ', arguments)} in {folder} exited with {exitCode}:\n{output}");
        return output;
    }

    /// <summary>Runs a command, whatever comes of it.</summary>
    public static (int ExitCode, string Output) Try(string folder, params string[] arguments) => Try(folder, "dotnet", arguments);

    /// <summary>Runs a script whose commands are the SDK's.</summary>
    public static (int ExitCode, string Output) TryScript(string folder, params string[] arguments) => Try(folder, "bash", arguments);

    private static (int ExitCode, string Output) Try(string folder, string program, string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var (name, value) in Surroundings.Concat(CompilerServer.Settings))
            start.Environment[name] = value;

        var output = new StringBuilder();
        using var process = new Process { StartInfo = start };
        process.OutputDataReceived += Collect;
        process.ErrorDataReceived += Collect;
        process.Start();
        process.StandardInput.Close();
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        if (!process.WaitForExit(Patience))
        {
            process.Kill(entireProcessTree: true);
            throw new TimeoutException($"{program} {string.Join(' ', arguments)} in {folder} took longer than {Patience.TotalMinutes} minutes.");
        }

        process.WaitForExit();
        return (process.ExitCode, output.ToString());

        void Collect(object sender, DataReceivedEventArgs line)
        {
            lock (output)
                output.AppendLine(line.Data);
        }
    }
}
