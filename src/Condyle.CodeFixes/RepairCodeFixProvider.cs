using System.Collections.Immutable;
using System.Composition;
using Condyle.Rules;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CodeActions;
using Microsoft.CodeAnalysis.CodeFixes;

namespace Condyle.CodeFixes;

/// <summary>Offers the repairs that findings bring along. The analyzer has worked out the edits, so one provider serves every rule.</summary>
[ExportCodeFixProvider(LanguageNames.CSharp, Name = nameof(RepairCodeFixProvider)), Shared]
public sealed class RepairCodeFixProvider : CodeFixProvider
{
    /// <inheritdoc/>
    public override ImmutableArray<string> FixableDiagnosticIds { get; } = [.. RuleBook.All.Select(rule => rule.Id)];

    /// <inheritdoc/>
    public override FixAllProvider GetFixAllProvider() => RepairFixAll.Instance;

    /// <inheritdoc/>
    public override async Task RegisterCodeFixesAsync(CodeFixContext context)
    {
        var project = context.Document.Project;
        var trials = new RepairTrials();
        foreach (var diagnostic in context.Diagnostics)
        {
            foreach (var offered in await trials.Passed(project, diagnostic, context.CancellationToken).ConfigureAwait(false))
            {
                var changes = SolutionEdits.Of(project, offered.Repair.Edits);
                if (!await changes.ChangeAnything(context.CancellationToken).ConfigureAwait(false))
                    continue;
                context.RegisterCodeFix(CodeAction.Create(offered.Repair.Title, changes.Apply, offered.Key), diagnostic);
            }
        }
    }
}
