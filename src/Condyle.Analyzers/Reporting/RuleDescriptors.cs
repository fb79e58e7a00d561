using Condyle.Rules;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reporting;

/// <summary>The rules as the compiler knows them.</summary>
internal static class RuleDescriptors
{
    private static readonly Dictionary<string, DiagnosticDescriptor> ById = RuleBook.All.ToDictionary(rule => rule.Id, Describe);

    public static IEnumerable<DiagnosticDescriptor> All => ById.Values;

    public static DiagnosticDescriptor Of(Rule rule) => ById[rule.Id];

    private static DiagnosticDescriptor Describe(Rule rule) => new(
        rule.Id,
        rule.Title,
        "{0}",
        Families.NameOf(rule.Id),
        rule.Severity switch
        {
            Severity.Error => DiagnosticSeverity.Error,
            Severity.Warning => DiagnosticSeverity.Warning,
            _ => DiagnosticSeverity.Info,
        },
        isEnabledByDefault: true,
        description: rule.Summary);
}
