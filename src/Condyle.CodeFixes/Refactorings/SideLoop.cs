using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>Puts a loop over both sides around statements; layout and comments stay as they are.</summary>
internal static class SideLoop
{
    /// <summary>The changes of the text; none where the statements don't begin a line, or a text of theirs goes over several lines.</summary>
    public static IReadOnlyList<TextChange>? Around(IReadOnlyList<StatementSyntax> statements, SidedCode sided, SourceText text)
    {
        var (start, end) = (statements[0].SpanStart, statements[statements.Count - 1].Span.End);
        var (first, last) = (text.Lines.GetLineFromPosition(start), text.Lines.GetLineFromPosition(end));
        var indent = text.ToString(TextSpan.FromBounds(first.Start, start));
        if (indent.Trim().Length > 0 || statements.SelectMany(statement => statement.DescendantTokens()).Any(GoesOverLines))
            return null;
        var step = indent.Contains('\t') ? "\t" : "    ";
        var newLine = text.NewLineAt(start);
        var isPlain = statements is [ExpressionStatementSyntax] && first.LineNumber == last.LineNumber;
        var head = $"foreach (var {sided.Variable} in {nameof(Side)}.{nameof(Side.Both)}){newLine}{indent}";
        var changes = new List<TextChange> { new(new TextSpan(start, 0), head + (isPlain ? step : $"{{{newLine}{indent}{step}")) };
        for (var line = first.LineNumber + 1; line <= last.LineNumber; line++)
        {
            if (text.Lines[line].Span.Length > 0)
                changes.Add(new(new TextSpan(text.Lines[line].Start, 0), step));
        }

        if (!isPlain)
            changes.Add(new(new TextSpan(last.End, 0), $"{newLine}{indent}}}"));
        // An insertion where something is replaced comes first.
        return [.. changes.Concat(sided.Changes).OrderBy(change => change.Span.Start).ThenBy(change => change.Span.Length)];
    }

    private static bool GoesOverLines(SyntaxToken token) =>
        token.Kind() is SyntaxKind.StringLiteralToken or SyntaxKind.InterpolatedStringTextToken or SyntaxKind.MultiLineRawStringLiteralToken && token.Text.IndexOf('\n') >= 0;
}
