using System.Globalization;
using System.Text.RegularExpressions;
using Condyle.Benchmarks.Measuring;
using Condyle.Benchmarks.Projects;

namespace Condyle.Benchmarks.Reader;

/// <summary>Our analyzers beside those that the SDK runs by default, in the same real builds, as the compiler itself times them.</summary>
internal static partial class SdkAnalyzers
{
    private const int Rigs = 200;
    private const int Builds = 3;

    public static IEnumerable<Result> Measure()
    {
        using var project = new BuiltProject(Rigs);
        yield return Measure(project, "the SDK's own", ReaderGoals.SdkAnalyzers);
        // By default most of the SDK's rules don't run.
        yield return Measure(project, "the SDK's own with all that it recommends", null, "-p:AnalysisMode=Recommended");
    }

    private static Result Measure(BuiltProject project, string name, double? goal, params string[] settings)
    {
        var builds = Enumerable.Range(0, Builds).Select(_ => SecondsByAssembly(project.Build(["-p:ReportAnalyzer=true", "-v:d", .. settings]))).ToList();
        var ours = builds.Select(build => SecondsOf(build, assembly => assembly.StartsWith("Condyle", StringComparison.Ordinal))).ToArray();
        var theirs = builds.Select(build => SecondsOf(build, assembly => assembly.EndsWith(".NetAnalyzers", StringComparison.Ordinal))).ToArray();
        return new Result(
            $"a build of {Rigs} rigs: our analyzers, against {name}",
            SideBySide.Median([.. ours.Zip(theirs, (a, b) => a / b)]),
            goal,
            FormattableString.Invariant($"ours {SideBySide.Median(ours):0.00} s, the SDK's {SideBySide.Median(theirs):0.00} s"));
    }

    private static double SecondsOf(IReadOnlyList<(string Assembly, double Seconds)> build, Func<string, bool> whose) =>
        build.Where(line => whose(line.Assembly)).Select(line => line.Seconds).DefaultIfEmpty(double.NaN).Sum();

    private static List<(string Assembly, double Seconds)> SecondsByAssembly(string output) =>
        [.. AssemblyLine().Matches(output).Select(line => (line.Groups["assembly"].Value, double.Parse(line.Groups["seconds"].Value, CultureInfo.InvariantCulture)))];

    // "   1.234   45      Condyle.Analyzers, Version=…" heads the lines of an assembly's analyzers; what took too short to tell begins with "<".
    [GeneratedRegex(@"^\s*<?(?<seconds>\d+\.\d+)\s+<?\d+\s+(?<assembly>[\w.]+), Version=", RegexOptions.Multiline)]
    private static partial Regex AssemblyLine();
}
