using System.Collections.Immutable;
using Condyle.Analyzers.Reading;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Diagnostics;

namespace Condyle.Analyzers.Reporting;

/// <summary>
/// Reads rig code and reports what the rules find, file by file: each finding by an action of its own file, so that editors show it as one types.
/// </summary>
[DiagnosticAnalyzer(LanguageNames.CSharp)]
public sealed class RigAnalyzer : DiagnosticAnalyzer
{
    /// <inheritdoc/>
    public override ImmutableArray<DiagnosticDescriptor> SupportedDiagnostics { get; } = [.. RuleDescriptors.All];

    /// <inheritdoc/>
    public override void Initialize(AnalysisContext context)
    {
        context.EnableConcurrentExecution();
        context.ConfigureGeneratedCodeAnalysis(GeneratedCodeAnalysisFlags.None);
        context.RegisterCompilationStartAction(static start =>
        {
            if (start.Compilation.GetTypeByMetadataName("Condyle.IRigDefinition") is not { } definition)
                return;
            // A build that only serves an editor reads a shared helper for a bounded number of rigs; a real build for all.
            var isLive = start.Options.AnalyzerConfigOptionsProvider.GlobalOptions.TryGetValue("build_property.DesignTimeBuild", out var designTime)
                && designTime.Equals("true", StringComparison.OrdinalIgnoreCase);
            // The compiler hands out one model for a file while it works on it, so that no body is bound twice.
#pragma warning disable RS1030 // A rig's helpers lie in other files than the one at hand.
            var session = new ReadingSession(start.Compilation, definition, isLive, tree => start.Compilation.GetSemanticModel(tree));
#pragma warning restore RS1030
            start.RegisterSemanticModelAction(file => Report(file, session));
        });
    }

    private static void Report(SemanticModelAnalysisContext file, ReadingSession session)
    {
        var trees = file.SemanticModel.Compilation.SyntaxTrees;
        foreach (var finding in session.FindingsIn(file.SemanticModel.SyntaxTree, file.CancellationToken))
        {
            file.ReportDiagnostic(Diagnostic.Create(
                RuleDescriptors.Of(finding.Rule),
                LocationOf(finding.Place)!,
                finding.Related.Select(LocationOf).OfType<Location>(),
                RepairProperties.Write(finding.Repairs),
                finding.Message));
        }

        Location? LocationOf(Origin origin)
        {
            var tree = origin.Path == file.SemanticModel.SyntaxTree.FilePath ? file.SemanticModel.SyntaxTree : trees.FirstOrDefault(candidate => candidate.FilePath == origin.Path);
            return tree is null || origin.Span.End > tree.Length ? null : Location.Create(tree, origin.Span);
        }
    }
}
