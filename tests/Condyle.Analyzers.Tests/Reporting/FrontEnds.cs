using System.Collections.Immutable;
using Condyle.Analyzers.Reporting;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Diagnostics;

namespace Condyle.Analyzers.Tests.Reporting;

/// <summary>What the analyzer finds in code, and what the program finds that runs it.</summary>
internal static class FrontEnds
{
    public static Task<ImmutableArray<Diagnostic>> Read(params (string Path, string Source)[] files) => Read(files, isLive: false);

    /// <summary>As an editor reads code that is being typed, or as a build does.</summary>
    public static Task<ImmutableArray<Diagnostic>> Read((string Path, string Source)[] files, bool isLive) =>
        CompiledCode.Compile(files).WithAnalyzers([new RigAnalyzer()], new AnalyzerOptions([], new Options(isLive))).GetAnalyzerDiagnosticsAsync();

    public static IReadOnlyList<RigFinding> Run(params (string Path, string Source)[] files) =>
    [
        .. CompiledCode.Load(CompiledCode.Compile(files)).GetTypes()
            .Where(type => typeof(IRigDefinition).IsAssignableFrom(type) && !type.IsAbstract)
            .SelectMany(type => Rig.Examine((IRigDefinition)Activator.CreateInstance(type)!).Findings),
    ];

    /// <summary>
    /// What the analyzer finds is found by the program in the same words; and what the program finds, each turn of a loop anew, the analyzer shows at
    /// one of its places.
    /// </summary>
    public static async Task Agree(params (string Path, string Source)[] files)
    {
        var read = await Read(files);
        var ran = Run(files);
        Assert.Superset(read.Select(finding => $"{finding.Id}: {finding.GetMessage()}").ToHashSet(), Words(ran));
        Assert.Equal(ran.Select(finding => finding.Rule).Distinct().Order(), read.Select(finding => finding.Id).Distinct().Order());
        Assert.All(ran.Where(finding => finding.Line > 0), finding => Assert.Contains((finding.Rule, finding.Line), read.SelectMany(Places)));
    }

    private sealed class Options(bool isLive) : AnalyzerConfigOptionsProvider
    {
        public override AnalyzerConfigOptions GlobalOptions => new DesignTime(isLive);

        public override AnalyzerConfigOptions GetOptions(SyntaxTree tree) => GlobalOptions;

        public override AnalyzerConfigOptions GetOptions(AdditionalText textFile) => GlobalOptions;
    }

    private sealed class DesignTime(bool isLive) : AnalyzerConfigOptions
    {
        public override bool TryGetValue(string key, out string value)
        {
            value = "true";
            return isLive && key == "build_property.DesignTimeBuild";
        }
    }

    private static HashSet<string> Words(IEnumerable<RigFinding> findings) => [.. findings.Select(finding => $"{finding.Rule}: {finding.Message}")];

    private static IEnumerable<(string Rule, int Line)> Places(Diagnostic finding) =>
        finding.AdditionalLocations.Prepend(finding.Location).Select(place => (finding.Id, place.GetLineSpan().EndLinePosition.Line + 1));
}
