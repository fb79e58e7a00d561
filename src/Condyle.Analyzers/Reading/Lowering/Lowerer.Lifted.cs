using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>Operators and conversions on values that may be missing, where they aren't the compiler's own.</summary>
internal sealed partial class Lowerer
{
    /// <summary>Calls an operator on the operands on the stack, if none is missing: else there is no result, and a comparison says what it says of null.</summary>
    private void Lifted(int count, BinaryOperatorKind kind, Action call)
    {
        var (missing, end) = (new JumpLabel(), new JumpLabel());
        var operands = Enumerable.Range(0, count).Select(_ => Temporary()).ToList();
        foreach (var operand in Enumerable.Reverse(operands))
            Emit(new StoreSlot(operand));
        foreach (var operand in operands)
        {
            Emit(new LoadSlot(operand));
            Emit(new NullTest());
            Emit(new Branch(missing, true, Stops(missing, end)));
        }

        operands.ForEach(operand => Emit(new LoadSlot(operand)));
        call();
        Emit(new Jump(end));
        Mark(missing);
        switch (kind)
        {
            case BinaryOperatorKind.Equals or BinaryOperatorKind.NotEquals:
                foreach (var operand in operands)
                {
                    Emit(new LoadSlot(operand));
                    Emit(new NullTest());
                }

                Emit(new BinaryOperator(kind, false, Truth));
                break;
            case BinaryOperatorKind.LessThan or BinaryOperatorKind.LessThanOrEqual or BinaryOperatorKind.GreaterThan or BinaryOperatorKind.GreaterThanOrEqual:
                Emit(new PushConstant(false));
                break;
            default:
                Emit(new PushConstant(null));
                break;
        }

        Mark(end);
    }

    /// <summary>Converts the value on the stack, if it is there: a missing one stays so where the result may be missing, else it is an error.</summary>
    private void LiftedConversion(ITypeSymbol? to, Action call)
    {
        if (IsNullable(to))
        {
            Lifted(1, BinaryOperatorKind.None, call);
            return;
        }

        Emit(new TakeValue());
        call();
    }

    private static bool IsLifted(IConversionOperation conversion, IMethodSymbol converter) =>
        IsNullable(conversion.Operand.Type) && converter.Parameters is [{ Type: { IsValueType: true } taken }] && !IsNullable(taken);

    private static bool IsNullable(ITypeSymbol? type) => type?.OriginalDefinition.SpecialType == SpecialType.System_Nullable_T;

    // Of a number that may be missing the compiler's tree doesn't tell.
    private static bool IsChecked(IConversionOperation conversion) => conversion.IsChecked
        || ((IsNullable(conversion.Type) || IsNullable(conversion.Operand.Type)) && IsCheckedAt(conversion));

    private static bool IsCheckedAt(IOperation operation)
    {
        foreach (var around in operation.Syntax.Ancestors())
        {
            switch (around)
            {
                case CheckedExpressionSyntax or CheckedStatementSyntax: return around.IsKind(SyntaxKind.CheckedExpression) || around.IsKind(SyntaxKind.CheckedStatement);
                case MemberDeclarationSyntax: return operation.SemanticModel?.Compilation.Options is CSharpCompilationOptions { CheckOverflow: true };
            }
        }

        return false;
    }
}
