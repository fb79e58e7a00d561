using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>The literals that a constant text was made of, wherever they are written: who changes one of them changes the text.</summary>
internal static class ConstantOrigins
{
    public static IReadOnlyList<Origin> Of(IOperation operation) => operation switch
    {
        ILocalReferenceOperation { Local.DeclaringSyntaxReferences: [var declared] } => Of(declared, operation.SemanticModel),
        IFieldReferenceOperation { Field.DeclaringSyntaxReferences: [var declared] } => Of(declared, operation.SemanticModel),
        ILiteralOperation { Syntax: LiteralExpressionSyntax literal } => [OriginOf(literal)],
        _ => [.. operation.ChildOperations.SelectMany(Of)],
    };

    /// <summary>The literals of a parameter's default value.</summary>
    public static IReadOnlyList<Origin> Of(IParameterSymbol? parameter, SemanticModel? model) =>
        parameter?.DeclaringSyntaxReferences is [var declared] ? Of(declared, model) : [];

    private static IReadOnlyList<Origin> Of(SyntaxReference declared, SemanticModel? model)
    {
        var value = declared.GetSyntax() switch
        {
            VariableDeclaratorSyntax variable => variable.Initializer?.Value,
            ParameterSyntax parameter => parameter.Default?.Value,
            _ => null,
        };
        if (value is null)
            return [];
        return value is not LiteralExpressionSyntax && model?.SyntaxTree == value.SyntaxTree && model.GetOperation(value) is { } operation
            ? Of(operation)
            : [.. value.DescendantNodesAndSelf().OfType<LiteralExpressionSyntax>().Where(literal => literal.IsKind(SyntaxKind.StringLiteralExpression)).Select(OriginOf)];
    }

    private static Origin OriginOf(LiteralExpressionSyntax literal) => new(literal.SyntaxTree.FilePath, literal.Span);
}
