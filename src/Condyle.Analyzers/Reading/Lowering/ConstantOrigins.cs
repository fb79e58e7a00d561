using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>The literals that a constant text was made of, wherever they are written: who changes one of them changes the text.</summary>
internal static class ConstantOrigins
{
    public static IReadOnlyList<LiteralExpressionSyntax> Of(IOperation operation) => Collect([operation], operation.SemanticModel);

    /// <summary>The literals of a parameter's default value.</summary>
    public static IReadOnlyList<LiteralExpressionSyntax> Of(IParameterSymbol? parameter, SemanticModel? model)
    {
        var pending = new Stack<IOperation>();
        List<LiteralExpressionSyntax> literals = parameter?.DeclaringSyntaxReferences is [var declared] ? [.. Declared(declared, model, pending)] : [];
        return [.. literals, .. Collect(pending, model)];
    }

    // Constants are made of constants, however many.
    private static List<LiteralExpressionSyntax> Collect(IEnumerable<IOperation> operations, SemanticModel? model)
    {
        var found = new List<LiteralExpressionSyntax>();
        var pending = new Stack<IOperation>(operations);
        var seen = new HashSet<SyntaxReference>();
        while (pending.Count > 0)
        {
            switch (pending.Pop())
            {
                case ILocalReferenceOperation { Local.DeclaringSyntaxReferences: [var declared] }:
                    if (seen.Add(declared))
                        found.AddRange(Declared(declared, model, pending));
                    break;
                case IFieldReferenceOperation { Field.DeclaringSyntaxReferences: [var declared] }:
                    if (seen.Add(declared))
                        found.AddRange(Declared(declared, model, pending));
                    break;
                case ILiteralOperation { Syntax: LiteralExpressionSyntax literal }:
                    found.Add(literal);
                    break;
                case var other:
                    foreach (var child in other.ChildOperations.Reverse())
                        pending.Push(child);
                    break;
            }
        }

        return found;
    }

    private static IEnumerable<LiteralExpressionSyntax> Declared(SyntaxReference declared, SemanticModel? model, Stack<IOperation> pending)
    {
        var value = declared.GetSyntax() switch
        {
            VariableDeclaratorSyntax variable => variable.Initializer?.Value,
            ParameterSyntax parameter => parameter.Default?.Value,
            _ => null,
        };
        if (value is null)
            return [];
        if (value is LiteralExpressionSyntax || model?.SyntaxTree != value.SyntaxTree || CodeNesting.TooDeepIn(value) is not null || Compiler.Asked(() => model.GetOperation(value)) is not { } operation)
            return value.DescendantNodesAndSelf().OfType<LiteralExpressionSyntax>().Where(literal => literal.IsKind(SyntaxKind.StringLiteralExpression));
        pending.Push(operation);
        return [];
    }
}
