using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>Comments within code that is said otherwise: they stay, on lines of their own before what takes its place.</summary>
internal static class KeptComments
{
    public static IEnumerable<string> Of(SyntaxNode replaced) => replaced.DescendantTrivia()
        .Where(trivia => replaced.Span.Contains(trivia.Span) && trivia.Kind() is (SyntaxKind.SingleLineCommentTrivia or SyntaxKind.MultiLineCommentTrivia)).Select(trivia => trivia.ToString());
}
