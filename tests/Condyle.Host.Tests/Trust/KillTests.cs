using System.Diagnostics;
using System.Globalization;
using Xunit.Abstractions;

namespace Condyle.Host.Tests.Trust;

/// <summary>
/// A batch that is killed at any moment leaves whole files, old or new, and goes on when it is started again, to the same bytes as one that was never killed.
/// The suite kills three; <c>CONDYLE_KILLS=200</c> kills so many.
/// </summary>
public sealed class KillTests(ITestOutputHelper output) : IDisposable
{
    private const int InSuite = 3, Clips = 6;

    private readonly TestProgram program = new();

    public void Dispose() => program.Dispose();

    [Fact]
    public void A_killed_batch_leaves_the_old_file_or_the_new_one_and_goes_on()
    {
        program.Write("hoist.gltf", Hoist.Delivered);
        for (var clip = 0; clip < Clips; clip++)
            ClipFiles.Write(program, $"clip_{clip}", 20 + clip, seconds: 60);
        // Two sets of settings in turn: so there is always an old file to lose.
        var whole = new Dictionary<string, Dictionary<string, byte[]>> { ["30"] = Bake("whole_30", "30"), ["20"] = Bake("whole_20", "20") };
        var start = Stopwatch.GetTimestamp();
        Assert.Equal(0, Run("--fps", "30", "--out", program["timed"]).Finish());
        var length = Stopwatch.GetElapsedTime(start);

        var random = new Random(1905);
        var (kills, unfinished, ended) = (Count(), 0, 0);
        for (var kill = 0; kill < kills; kill++)
        {
            var rate = kill % 2 == 0 ? "30" : "20";
            using var run = Run("--fps", rate, "--out", program["build"]);
            ended += run.KillAfter(length * (0.7 * random.NextDouble())) ? 0 : 1;
            unfinished += Check(whole) ? 0 : 1;
        }

        Assert.Equal(0, Run("--fps", "30", "--out", program["build"]).Finish());
        var build = Files("build");
        Assert.Equal(whole["30"].Keys.Order(), build.Keys.Order());
        Assert.All(build, file => Assert.Equal(whole["30"][file.Key], file.Value));
        output.WriteLine($"{kills} kills: {ended} came after the end, {unfinished} left work undone; every file was an old or a new one");
        Assert.True(ended < kills, "no run was killed before its end");
    }

    /// <summary>Every file that is there is whole; whether all of them are.</summary>
    private bool Check(Dictionary<string, Dictionary<string, byte[]>> whole)
    {
        var build = Files("build").Where(file => !file.Key.StartsWith('.')).ToDictionary();
        Assert.All(build, file => Assert.True(whole.Values.Any(one => one[file.Key].AsSpan().SequenceEqual(file.Value)), $"{file.Key} is neither the old file nor the new one"));
        foreach (var manifest in build.Keys.Where(name => name.EndsWith(".bake.json", StringComparison.Ordinal)))
            Assert.Contains(manifest.Replace(".bake.json", ".glb", StringComparison.Ordinal), build.Keys);
        return build.Count == 2 * Clips;
    }

    private Dictionary<string, byte[]> Bake(string folder, string rate)
    {
        Assert.Equal(0, Run("--fps", rate, "--out", program[folder]).Finish());
        return Files(folder);
    }

    private Dictionary<string, byte[]> Files(string folder) => !Directory.Exists(program[folder]) ? [] :
        Directory.GetFiles(program[folder]).ToDictionary(file => Path.GetFileName(file), File.ReadAllBytes);

    private static int Count() => int.TryParse(Environment.GetEnvironmentVariable("CONDYLE_KILLS"), NumberStyles.None, CultureInfo.InvariantCulture, out var asked) ? asked : InSuite;

    private Running Run(params string[] args) => new(program.Path, ["bake", "clips", "--jobs", "2", .. args]);

    /// <summary>The program in a process of its own.</summary>
    private sealed class Running : IDisposable
    {
        private readonly Process process;

        public Running(string folder, string[] args)
        {
            var start = new ProcessStartInfo(Environment.ProcessPath is { } host && Path.GetFileNameWithoutExtension(host) == "dotnet" ? host : "dotnet")
            {
                WorkingDirectory = folder,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            };
            start.ArgumentList.Add(typeof(KillTests).Assembly.Location);
            foreach (var arg in args)
                start.ArgumentList.Add(arg);
            process = Process.Start(start)!;
            process.OutputDataReceived += (_, _) => { };
            process.ErrorDataReceived += (_, line) => Errors += line.Data;
            process.BeginOutputReadLine();
            process.BeginErrorReadLine();
        }

        private string Errors { get; set; } = "";

        public int Finish()
        {
            process.WaitForExit();
            Assert.Equal("", Errors);
            return process.ExitCode;
        }

        /// <summary>Kills it as the system does when it has to; false when it had ended by then.</summary>
        public bool KillAfter(TimeSpan time)
        {
            if (process.WaitForExit(time))
                return false;
            process.Kill();
            process.WaitForExit();
            return true;
        }

        public void Dispose() => process.Dispose();
    }
}
