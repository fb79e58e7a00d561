using Microsoft.CodeAnalysis.Text;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>How the lines of a text are laid out: new ones beside them look alike.</summary>
internal static class Layout
{
    /// <summary>What stands before the code of the line that a place is on.</summary>
    public static string IndentAt(this SourceText text, int position) => new([.. text.ToString(text.Lines.GetLineFromPosition(position).Span).TakeWhile(char.IsWhiteSpace)]);

    /// <summary>How the line that a place is on is ended.</summary>
    public static string NewLineAt(this SourceText text, int position) =>
        text.Lines.GetLineFromPosition(position) is var line && text.ToString(TextSpan.FromBounds(line.End, line.EndIncludingLineBreak)) is { Length: > 0 } end ? end : "\n";
}
