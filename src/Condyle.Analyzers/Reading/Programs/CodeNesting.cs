using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// Looks how deep code lies inside itself before the compiler is asked for its operations: it makes them by recursion without looking at its
/// stack, and would take the host down.
/// </summary>
internal static class CodeNesting
{
    private const int LevelsInACharacter = 2;

    /// <summary>The first piece of code that lies too deep; none where all is well.</summary>
    public static SyntaxNode? TooDeepIn(SyntaxNode code)
    {
        var pending = new Stack<(SyntaxNode Node, int Depth)>([(code, 1)]);
        while (pending.Count > 0)
        {
            var (node, depth) = pending.Pop();
            if (depth > Limits.SyntaxDepth)
                return node;
            // Most code is too short to go that deep.
            if (depth + (node.FullSpan.Length * LevelsInACharacter) <= Limits.SyntaxDepth)
                continue;
            foreach (var child in node.ChildNodes())
                pending.Push((child, IsRestOfASum(child, node) ? depth : depth + 1));
        }

        return null;
    }

    // The compiler goes through the terms of a sum one after the other.
    private static bool IsRestOfASum(SyntaxNode child, SyntaxNode parent) =>
        parent is BinaryExpressionSyntax sum && child is BinaryExpressionSyntax && child == sum.Left;
}
