using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>Conversions of what lies within something else: the items of a loop and those of a tuple.</summary>
internal sealed partial class Lowerer
{
    /// <summary>Converts the item on the stack to the type of a loop's variable.</summary>
    private void ConvertItem(IForEachLoopOperation loop, ITypeSymbol type)
    {
        if (loop.Syntax is not CommonForEachStatementSyntax syntax || loop.SemanticModel?.GetForEachStatementInfo(syntax) is not { } info || SymbolEqualityComparer.Default.Equals(info.ElementType, type))
            return;
        if (info.ElementConversion.MethodSymbol is { } converter)
            EmitOperator(converter, 1, syntax, [null]);
        else if (IsNumber(TypeKeys.Of(type)))
            Emit(new ConvertNumber(TypeKeys.Of(type), false));
    }

    // The items of a literal are converted where they stand.
    private static bool IsOfItems(IConversionOperation conversion) =>
        conversion is { Type.IsTupleType: true, Operand: { Type.IsTupleType: true } operand } && operand is not ITupleOperation && !KeyOf(conversion).Equals(KeyOf(operand));
}
