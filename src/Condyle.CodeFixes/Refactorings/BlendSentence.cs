using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>A blend said in one statement: <c>rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount);</c>.</summary>
/// <param name="Statement">The statement, which stands in a block.</param>
/// <param name="Verb">The name of the call that begins it.</param>
/// <param name="Draft">What the blend is said on.</param>
/// <param name="Chain">What is blended.</param>
/// <param name="Weights">The weights in the order of their sources.</param>
internal sealed record BlendSentence(StatementSyntax Statement, SimpleNameSyntax Verb, ExpressionSyntax Draft, ExpressionSyntax Chain, IReadOnlyList<ExpressionSyntax> Weights)
{
    public static BlendSentence? At(SyntaxNode root, TextSpan span)
    {
        if (root.FindNode(span).FirstAncestorOrSelf<StatementSyntax>() is not { Parent: BlockSyntax } statement || statement is not (ExpressionStatementSyntax or LocalDeclarationStatementSyntax))
            return null;
        var calls = statement.DescendantNodes().OfType<InvocationExpressionSyntax>()
            .Where(call => call.Expression is MemberAccessExpressionSyntax)
            .ToLookup(call => ((MemberAccessExpressionSyntax)call.Expression).Name.Identifier.ValueText);
        if (calls["Blend"].ToList() is not [{ ArgumentList.Arguments: [var chain] } blend] || blend.Expression is not MemberAccessExpressionSyntax { Expression: IdentifierNameSyntax draft } begun)
            return null;
        // The calls of a sentence lie in each other, the last one outermost.
        var weights = calls["From"].OrderBy(call => call.Span.End).Select(WeightOf).ToList();
        return weights.Contains(null) ? null : new(statement, begun.Name, draft, chain.Expression, weights!);
    }

    private static ExpressionSyntax? WeightOf(InvocationExpressionSyntax from)
    {
        var arguments = from.ArgumentList.Arguments;
        var weight = (arguments.FirstOrDefault(argument => argument.NameColon?.Name.Identifier.ValueText == "weight") ?? arguments.ElementAtOrDefault(1))?.Expression;
        return weight is null || weight.DescendantNodesAndSelf().Any(part => part is InvocationExpressionSyntax or AssignmentExpressionSyntax || part.IsKind(SyntaxKind.PostIncrementExpression)) ? null : weight;
    }
}
