using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Condyle.Tests.Shared;

/// <summary>
/// Runs the independent programs of tests/outside. Where Node.js or its packages can't be had, the calling test (a <c>[SkippableFact]</c>)
/// is reported skipped, never passed.
/// </summary>
internal static class OutsideChecks
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    private static readonly Lazy<string?> WhyNot = new(Prepare);

    /// <summary>What the validator of the glTF standard says about a file.</summary>
    public static ValidatorReport Validate(string file)
    {
        var report = JsonNode.Parse(Run("validate.mjs", null, file))!;
        return new ValidatorReport(
            report["numErrors"]!.GetValue<int>(),
            report["numWarnings"]!.GetValue<int>(),
            [.. report["messages"]!.AsArray().Select(message => $"{message!["severity"]} {message["code"]} {message["pointer"]}: {message["message"]}")]);
    }

    /// <summary>World matrices by three.js: for each time and each node, 16 numbers, column after column. An empty clip name shows the rest.</summary>
    public static double[][][] Play(string file, string clip, IEnumerable<double> times, IEnumerable<int> nodes) =>
        JsonSerializer.Deserialize<double[][][]>(Run("play.mjs", JsonSerializer.Serialize(new { times, nodes }), file, clip))!;

    /// <summary>Spherical interpolation by gl-matrix, then by three.js, in double precision; quaternions as x, y, z, w.</summary>
    public static double[][][] Slerp(IEnumerable<(double[] A, double[] B, double T)> questions) =>
        JsonSerializer.Deserialize<double[][][]>(Run("slerp.mjs", JsonSerializer.Serialize(questions.Select(q => new { a = q.A, b = q.B, t = q.T }))))!;

    /// <summary>Runs a script of tests/outside and returns what it prints.</summary>
    /// <exception cref="SkipException">Node.js or the packages are missing; the test is skipped.</exception>
    public static string Run(string script, string? input = null, params string[] arguments)
    {
        Skip.If(WhyNot.Value is not null, WhyNot.Value);
        var (exitCode, output, errors) = Start("node", input, [script, .. arguments]);
        return exitCode == 0 ? output : throw new InvalidOperationException($"{script} failed: {errors}");
    }

    /// <summary>
    /// The packages of a folder below tests/outside that are too large to fetch for every run: fetched where CI is set to true, as CI does, and used
    /// wherever they are there.
    /// </summary>
    /// <returns>The folder that holds them.</returns>
    /// <exception cref="SkipException">They aren't there and aren't fetched; the test is skipped.</exception>
    public static string LargePackages(string name, string size)
    {
        Skip.If(WhyNot.Value is not null, WhyNot.Value);
        var folder = Path.Combine(Folder, name);
        var modules = Path.Combine(folder, "node_modules");
        Skip.If(
            Environment.GetEnvironmentVariable("CI") != "true" && !File.Exists(Path.Combine(modules, ".package-lock.json")),
            $"The packages of tests/outside/{name} are a download of {size}: run 'npm ci' there, or the tests with CI=true, to check against them.");
        var whyNot = Install(folder);
        Skip.If(whyNot is not null, whyNot);
        return modules;
    }

    private static string? Prepare() => WhyNoNode() ?? Install(Folder);

    private static string? WhyNoNode()
    {
        try
        {
            if (Start("node", null, "--version").ExitCode != 0)
                return "Node.js is missing: install it to run the checks against independent programs.";
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return "Node.js is missing: install it to run the checks against independent programs.";
        }

        return null;
    }

    private static string? Install(string folder)
    {
        // Test projects run at the same time, and one installation serves them all.
        using var turn = WaitForTurn(folder);
        if (File.Exists(Path.Combine(folder, "node_modules", ".package-lock.json")))
            return null;
        var (exitCode, _, errors) = OperatingSystem.IsWindows()
            ? StartIn(folder, "cmd", null, "/c", "npm", "ci", "--no-audit", "--no-fund")
            : StartIn(folder, "npm", null, "ci", "--no-audit", "--no-fund");
        return exitCode == 0 ? null : $"The Node.js packages of {folder} can't be installed: {errors.ReplaceLineEndings(" ")}";
    }

    private static FileStream WaitForTurn(string folder)
    {
        var until = Stopwatch.StartNew();
        while (true)
        {
            try
            {
                return new FileStream(Path.Combine(folder, "node_modules.lock"), FileMode.OpenOrCreate, FileAccess.Write, FileShare.None, 1, FileOptions.DeleteOnClose);
            }
            catch (IOException) when (until.Elapsed < Patience)
            {
                Thread.Sleep(100);
            }
        }
    }

    private static (int ExitCode, string Output, string Errors) Start(string program, string? input, params string[] arguments) => StartIn(Folder, program, input, arguments);

    private static (int ExitCode, string Output, string Errors) StartIn(string folder, string program, string? input, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        try
        {
            process.StandardInput.Write(input);
            process.StandardInput.Close();
        }
        catch (IOException)
        {
            // The program ended without reading; its exit code and errors tell why.
        }
        if (!process.WaitForExit(Patience))
        {
            process.Kill(entireProcessTree: true);
            throw new TimeoutException(string.Create(CultureInfo.InvariantCulture, $"{program} {arguments[0]} took longer than {Patience.TotalMinutes} minutes"));
        }
        return (process.ExitCode, output.Result, errors.Result);
    }

    private static string Folder { get; } = FindFolder();

    private static string FindFolder()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var outside = Path.Combine(folder.FullName, "tests", "outside");
            if (File.Exists(Path.Combine(outside, "package.json")))
                return outside;
        }
        throw new DirectoryNotFoundException("tests/outside isn't above the test's folder");
    }
}

/// <summary>Counts, and one line a message: severity (0 error, 1 warning, 2 information, 3 hint), code, place, text.</summary>
internal sealed record ValidatorReport(int Errors, int Warnings, IReadOnlyList<string> Messages);
