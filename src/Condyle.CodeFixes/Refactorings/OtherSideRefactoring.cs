using System.Composition;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CodeActions;
using Microsoft.CodeAnalysis.CodeRefactorings;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>At statements that build one side of a rig: says them for both sides, where that adds the mirror image and nothing else.</summary>
[ExportCodeRefactoringProvider(LanguageNames.CSharp, Name = nameof(OtherSideRefactoring)), Shared]
public sealed class OtherSideRefactoring : CodeRefactoringProvider
{
    /// <summary>How many stretches of code are tried: each takes a reading.</summary>
    private const int MostTried = 4;

    /// <inheritdoc/>
    public override async Task ComputeRefactoringsAsync(CodeRefactoringContext context)
    {
        var (document, cancellation) = (context.Document, context.CancellationToken);
        if (await document.GetSyntaxRootAsync(cancellation).ConfigureAwait(false) is not { } root || !StatementRuns.MayBeSided(root, context.Span)
            || await RigReading.Of(document, cancellation).ConfigureAwait(false) is not { } reading)
            return;
        var text = await document.GetTextAsync(cancellation).ConfigureAwait(false);
        var runs = StatementRuns.At(root, context.Span, statement => SidedCode.Of([statement], reading)?.Side, reading.Code);
        foreach (var run in runs.Take(MostTried))
        {
            if (SidedCode.Of(run, reading) is not { } sided || SideLoop.Around(run, sided, text) is not { } changes)
                continue;
            var changed = document.WithText(text.WithChanges(changes));
            if (await reading.AddedBy(changed, cancellation).ConfigureAwait(false) is not { } added || !added.All(rig => MirrorImage.IsAllOf(rig, reading.Conventions)))
                continue;
            context.RegisterRefactoring(CodeAction.Create($"Add the {sided.Side.Opposite} side", _ => Task.FromResult(changed), nameof(OtherSideRefactoring)));
            return;
        }
    }
}
