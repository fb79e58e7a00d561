using Condyle.Analyzers.Reporting;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CodeActions;
using Microsoft.CodeAnalysis.CodeFixes;

namespace Condyle.CodeFixes;

/// <summary>Makes all repairs of a document, a project or a solution in one step.</summary>
internal sealed class RepairFixAll : FixAllProvider
{
    private RepairFixAll()
    {
    }

    public static RepairFixAll Instance { get; } = new();

    public override async Task<CodeAction?> GetFixAsync(FixAllContext fixAllContext)
    {
        var repairs = new List<(Project, IReadOnlyList<TextEdit>)>();
        var trials = new RepairTrials();
        var blends = new HashSet<string>();
        foreach (var (project, diagnostic) in await FindingsOf(fixAllContext).ConfigureAwait(false))
        {
            if (OfferedRepair.IsAsked(diagnostic, fixAllContext.CodeActionEquivalenceKey, fixAllContext.DiagnosticIds)
                && OfferedRepair.Choose([.. (await trials.Passed(project, diagnostic, fixAllContext.CancellationToken).ConfigureAwait(false)).Where(offered => !blends.Overlaps(offered.Repair.Blends))], fixAllContext.CodeActionEquivalenceKey) is { } chosen)
            {
                blends.UnionWith(chosen.Repair.Blends);
                repairs.Add((project, chosen.Repair.Edits));
                trials.Take(project, chosen.Repair);
            }
        }

        var changes = SolutionEdits.Of(fixAllContext.Solution, repairs);
        return await changes.ChangeAnything(fixAllContext.CancellationToken).ConfigureAwait(false)
            ? CodeAction.Create("Repair all findings of this kind", changes.Apply, fixAllContext.CodeActionEquivalenceKey)
            : null;
    }

    private static async Task<IEnumerable<(Project Project, Diagnostic Diagnostic)>> FindingsOf(FixAllContext context)
    {
        if (context is { Scope: FixAllScope.Document, Document: { } document })
            return Ordered(document.Project, await context.GetDocumentDiagnosticsAsync(document).ConfigureAwait(false));
        var found = new List<(Project, Diagnostic)>();
        foreach (var project in context.Scope == FixAllScope.Solution ? context.Solution.Projects : [context.Project])
            found.AddRange(Ordered(project, await context.GetAllDiagnosticsAsync(project).ConfigureAwait(false)));
        return found;
    }

    // In the order of the files, so that the same findings always give the same text.
    private static IEnumerable<(Project, Diagnostic)> Ordered(Project project, IEnumerable<Diagnostic> diagnostics) => diagnostics
        .OrderBy(diagnostic => diagnostic.Location.SourceTree?.FilePath, StringComparer.Ordinal)
        .ThenBy(diagnostic => diagnostic.Location.SourceSpan.Start)
        .Select(diagnostic => (project, diagnostic));
}
