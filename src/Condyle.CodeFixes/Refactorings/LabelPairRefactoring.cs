using System.Composition;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CodeActions;
using Microsoft.CodeAnalysis.CodeRefactorings;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>At a blend of two copies that a switch goes between: adds the labels that tell the animator which one has the limb.</summary>
[ExportCodeRefactoringProvider(LanguageNames.CSharp, Name = nameof(LabelPairRefactoring)), Shared]
public sealed class LabelPairRefactoring : CodeRefactoringProvider
{
    /// <inheritdoc/>
    public override async Task ComputeRefactoringsAsync(CodeRefactoringContext context)
    {
        var (document, cancellation) = (context.Document, context.CancellationToken);
        if (await document.GetSyntaxRootAsync(cancellation).ConfigureAwait(false) is not { } root || BlendSentence.At(root, context.Span) is not { } sentence
            || await RigReading.Of(document, cancellation).ConfigureAwait(false) is not { } reading || MissingLabels.Of(sentence, reading) is not { } missing)
            return;
        var text = await document.GetTextAsync(cancellation).ConfigureAwait(false);
        foreach (var code in missing.Code())
        {
            var changed = document.WithText(text.WithChanges(new TextChange(new TextSpan(sentence.Statement.Span.End, 0), Behind(sentence.Statement, text, code))));
            if (await reading.AddedBy(changed, cancellation).ConfigureAwait(false) is not { } added || !added.All(AddsLabelsOnly) || added.All(rig => rig.Added.Count == 0))
                continue;
            context.RegisterRefactoring(CodeAction.Create(missing.Title, _ => Task.FromResult(changed), nameof(LabelPairRefactoring)));
            return;
        }
    }

    private static bool AddsLabelsOnly(RigAddition rig)
    {
        var names = rig.After.Labels.Select(label => label.Name.ToString()).ToList();
        return rig.Added.All(line => line.StartsWith("label ", StringComparison.Ordinal)) && names.Distinct().Count() == names.Count;
    }

    private static string Behind(SyntaxNode statement, SourceText text, IEnumerable<string> code)
    {
        var line = text.Lines.GetLineFromPosition(statement.SpanStart);
        return string.Concat(code.Select(each => text.NewLineAt(line.Start) + text.ToString(TextSpan.FromBounds(line.Start, statement.SpanStart)) + each));
    }
}
