using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reading;

/// <summary>Finds where characters can be appended to a string in the source: just before its closing quotes.</summary>
internal static class Seams
{
    public static Seam? Of(SyntaxNode syntax, string path)
    {
        if (syntax.SyntaxTree.FilePath != path)
            return null;
        var origin = new Origin(path, syntax.Span);
        switch (syntax)
        {
            case LiteralExpressionSyntax { Token: var token } when token.IsKind(SyntaxKind.StringLiteralToken) || token.IsKind(SyntaxKind.SingleLineRawStringLiteralToken):
                var text = token.Text;
                var quotes = text.Length - text.TrimEnd('"').Length;
                if (token.IsKind(SyntaxKind.StringLiteralToken))
                    quotes = 1;
                return token.IsMissing || !text.EndsWith("\"", StringComparison.Ordinal) ? null : new Seam(origin, token.Span.End - quotes, origin);
            case InterpolatedStringExpressionSyntax { StringStartToken: var start, StringEndToken: { IsMissing: false } end }
                when !start.IsKind(SyntaxKind.InterpolatedMultiLineRawStringStartToken):
                return new Seam(origin, end.SpanStart, origin);
            default:
                return null;
        }
    }
}
