using System.Composition;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CodeActions;
using Microsoft.CodeAnalysis.CodeRefactorings;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>At a call of a recipe: says the sentences that it stands for in its place, where that makes the same rig.</summary>
[ExportCodeRefactoringProvider(LanguageNames.CSharp, Name = nameof(WriteOutRecipeRefactoring)), Shared]
public sealed class WriteOutRecipeRefactoring : CodeRefactoringProvider
{
    /// <inheritdoc/>
    public override async Task ComputeRefactoringsAsync(CodeRefactoringContext context)
    {
        var (document, cancellation) = (context.Document, context.CancellationToken);
        if (await document.GetSyntaxRootAsync(cancellation).ConfigureAwait(false) is not { } root || !RecipeSite.MayBeAt(root, context.Span)
            || await RigReading.Of(document, cancellation).ConfigureAwait(false) is not { IsWhole: true } reading || RecipeSite.At(root, context.Span, reading) is not { } site)
            return;
        var text = await document.GetTextAsync(cancellation).ConfigureAwait(false);
        if (WrittenOut.Of(site, reading, text) is not { } changes)
            return;
        var changed = document.WithText(text.WithChanges(changes));
        if (await reading.AddedBy(changed, cancellation).ConfigureAwait(false) is not { } added || !added.All(rig => rig.Added.Count == 0))
            return;
        context.RegisterRefactoring(CodeAction.Create("Write out the recipe", _ => Task.FromResult(changed), nameof(WriteOutRecipeRefactoring)));
    }
}
