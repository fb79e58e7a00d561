using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>What the code does with what a recipe gives back: each use names a part of it, by the same words each time.</summary>
/// <param name="Each">The expressions that name a part, with the words that lead there: <c>.Turns[1]</c>.</param>
internal sealed record ResultUses(IReadOnlyList<(ExpressionSyntax Expression, string Path)> Each)
{
    /// <summary>None where the result is used otherwise than part by part.</summary>
    public static ResultUses? Of(RecipeSite site, IReadOnlyCollection<string> paths, SemanticModel code)
    {
        var heads = new List<ExpressionSyntax>();
        if (site.Local is { } local)
        {
            if (site.Statement.Parent is not BlockSyntax block)
                return null;
            heads.AddRange(block.DescendantNodes().OfType<IdentifierNameSyntax>()
                .Where(name => name.Identifier.ValueText == local.Name && SymbolEqualityComparer.Default.Equals(code.GetSymbolInfo(name).Symbol, local)));
        }
        else if (site.Statement is not ExpressionStatementSyntax { Expression: var whole } || whole != site.Call)
        {
            heads.Add(site.Call);
        }

        var each = heads.ConvertAll(head => Longest(head, paths));
        return each.Exists(use => use is null) ? null : new(each.ConvertAll(use => use!.Value));
    }

    private static (ExpressionSyntax, string)? Longest(ExpressionSyntax head, IReadOnlyCollection<string> paths)
    {
        (ExpressionSyntax, string)? longest = null;
        var (expression, path) = ((ExpressionSyntax?)head, "");
        while (expression is { } named)
        {
            if (paths.Contains(path))
                longest = (named, path);
            (expression, var step) = named.Parent switch
            {
                MemberAccessExpressionSyntax member when member.Expression == named => (member, "." + member.Name),
                ElementAccessExpressionSyntax element when element.Expression == named => (element, element.ArgumentList.ToString()),
                PostfixUnaryExpressionSyntax { OperatorToken.ValueText: "!" } sure => (sure, ""),
                _ => ((ExpressionSyntax?)null, ""),
            };
            path += step;
        }

        return longest;
    }
}
