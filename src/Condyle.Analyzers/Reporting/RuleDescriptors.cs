using Condyle.Rules;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reporting;

/// <summary>The rules, and what a build says besides, as the compiler knows them.</summary>
internal static class RuleDescriptors
{
    private static readonly Dictionary<string, DiagnosticDescriptor> ById = RuleBook.All.ToDictionary(rule => rule.Id, Describe);

    public static IEnumerable<DiagnosticDescriptor> All => ById.Values;

    public static DiagnosticDescriptor Of(Rule rule) => ById[rule.Id];

    /// <summary>Describes what a build says besides the rules; whoever says it keeps that.</summary>
    public static DiagnosticDescriptor Of(BuildProblem problem, params string[] tags) => Describe(problem.Id, problem.Title, problem.Family, problem.Severity, tags);

    private static DiagnosticDescriptor Describe(Rule rule) => Describe(rule.Id, rule.Title, Families.NameOf(rule.Id), rule.Severity);

    private static DiagnosticDescriptor Describe(string id, string title, string family, Severity severity, params string[] tags) => new(
        id,
        title,
        "{0}",
        family,
        severity switch
        {
            Severity.Error => DiagnosticSeverity.Error,
            Severity.Warning => DiagnosticSeverity.Warning,
            _ => DiagnosticSeverity.Info,
        },
        isEnabledByDefault: true,
        description: RulePage.SummaryOf(id),
        customTags: tags);
}
