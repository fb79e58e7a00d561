using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reporting;

/// <summary>What code would mean if it were written at a place.</summary>
internal static class Speculation
{
    /// <summary>What an expression would stand for; none where it would stand for nothing, or only goes on after a <c>?.</c> that lies outside it, which makes the compiler fail.</summary>
    public static ISymbol? SymbolOf(ExpressionSyntax written, int position, SemanticModel model) =>
        written.DescendantNodesAndSelf().Any(part => part is MemberBindingExpressionSyntax or ElementBindingExpressionSyntax && !part.Ancestors().Any(around => around is ConditionalAccessExpressionSyntax))
            ? null
            : model.GetSpeculativeSymbolInfo(position, written, SpeculativeBindingOption.BindAsExpression).Symbol;
}
