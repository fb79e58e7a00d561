using System.Collections.Immutable;
using Condyle.Analyzers.Reporting;
using Condyle.Analyzers.Tests.Reporting;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Diagnostics;

namespace Condyle.Analyzers.Tests.Reading;

/// <summary>Runs the analyzer as the compiler does and gives back what it reports of half a rig, as <c>id text-at-the-place</c>: what reading finds, and the rules that need no more.</summary>
internal static class Findings
{
    public static async Task<IReadOnlyList<string>> In(string body, string members = "", string more = "") =>
        await InFiles(("rig.cs", Oracle.Rig(body, members)), ("more.cs", Oracle.Usings + more));

    public static async Task<IReadOnlyList<string>> InFiles(params (string Path, string Source)[] files)
    {
        var found = await Diagnostics(CompiledCode.Compile(files));
        return [.. found
            .Where(diagnostic => RigSnippet.Rules.Contains(diagnostic.Id))
            .OrderBy(diagnostic => diagnostic.Location.SourceTree!.FilePath).ThenBy(diagnostic => diagnostic.Location.SourceSpan.Start)
            .Select(diagnostic => $"{diagnostic.Id} {diagnostic.Location.SourceTree!.GetText().ToString(diagnostic.Location.SourceSpan)}")];
    }

    public static async Task<ImmutableArray<Diagnostic>> Diagnostics(Compilation compilation, CancellationToken cancellation = default)
    {
        var options = new CompilationWithAnalyzersOptions(new AnalyzerOptions([]), onAnalyzerException: null, concurrentAnalysis: true, logAnalyzerExecutionTime: false);
        return await new CompilationWithAnalyzers(compilation, [new RigAnalyzer()], options).GetAnalyzerDiagnosticsAsync(cancellation);
    }
}
