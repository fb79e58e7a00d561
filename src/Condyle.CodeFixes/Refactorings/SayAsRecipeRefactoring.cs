using System.Composition;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CodeActions;
using Microsoft.CodeAnalysis.CodeRefactorings;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>At statements that say a limb: says it by the recipe, where that makes the same rig.</summary>
[ExportCodeRefactoringProvider(LanguageNames.CSharp, Name = nameof(SayAsRecipeRefactoring)), Shared]
public sealed class SayAsRecipeRefactoring : CodeRefactoringProvider
{
    /// <inheritdoc/>
    public override async Task ComputeRefactoringsAsync(CodeRefactoringContext context)
    {
        var (document, cancellation) = (context.Document, context.CancellationToken);
        if (await document.GetSyntaxRootAsync(cancellation).ConfigureAwait(false) is not { } root || root.FindNode(context.Span).FirstAncestorOrSelf<BlockSyntax>() is not { } block
            || !SaysTwoBones(block) || await RigReading.Of(document, cancellation).ConfigureAwait(false) is not { IsWhole: true } reading)
            return;
        var text = await document.GetTextAsync(cancellation).ConfigureAwait(false);
        if (LimbFold.In(block, reading, text) is not { } changes)
            return;
        var changed = document.WithText(text.WithChanges(changes));
        if (await reading.AddedBy(changed, cancellation).ConfigureAwait(false) is not { } added || !added.All(rig => rig.Added.Count == 0))
            return;
        context.RegisterRefactoring(CodeAction.Create("Say it as a recipe", _ => Task.FromResult(changed), nameof(SayAsRecipeRefactoring)));
    }

    private static bool SaysTwoBones(BlockSyntax block) =>
        block.Statements.Any(statement => statement.DescendantNodes().OfType<MemberAccessExpressionSyntax>().Any(member => member.Name.Identifier.ValueText == nameof(RigDraft.TwoBone)));
}
