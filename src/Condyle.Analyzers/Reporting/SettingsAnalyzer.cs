using System.Collections.Immutable;
using Condyle.Rules;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Diagnostics;

namespace Condyle.Analyzers.Reporting;

/// <summary>Warns of a team's settings that can't be. They are a project's, not a file's, so a build says it once.</summary>
[DiagnosticAnalyzer(LanguageNames.CSharp)]
public sealed class SettingsAnalyzer : DiagnosticAnalyzer
{
    internal static readonly DiagnosticDescriptor Rule = RuleDescriptors.Of(BuildProblem.Setting, WellKnownDiagnosticTags.CompilationEnd);

    /// <inheritdoc/>
    public override ImmutableArray<DiagnosticDescriptor> SupportedDiagnostics { get; } = [Rule];

    /// <inheritdoc/>
    public override void Initialize(AnalysisContext context)
    {
        context.EnableConcurrentExecution();
        context.ConfigureGeneratedCodeAnalysis(GeneratedCodeAnalysisFlags.None);
        context.RegisterCompilationAction(static end =>
        {
            var settings = TeamSettings.Of(end.Compilation.Assembly);
            var place = settings.Written is { } written && !GeneratedCode.Includes(written.SyntaxTree, end.Compilation, end.CancellationToken)
                ? Location.Create(written.SyntaxTree, written.Span)
                : Location.None;
            foreach (var fault in settings.Faults)
                end.ReportDiagnostic(Diagnostic.Create(Rule, place, fault));
        });
    }
}
