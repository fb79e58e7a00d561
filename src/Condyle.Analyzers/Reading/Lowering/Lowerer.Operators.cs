using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>Operators and conversions.</summary>
internal sealed partial class Lowerer
{
    private void Convert(IConversionOperation conversion)
    {
        if (IsSpan(conversion.Type) && !conversion.Type!.Equals(conversion.Operand.Type, SymbolEqualityComparer.Default))
        {
            Value(conversion.Operand);
            Emit(new MakeSpan());
            return;
        }

        if (conversion.OperatorMethod is { } converter)
        {
            Value(conversion.Operand);
            var wanted = TypeKeys.Of(converter.Parameters[0].Type);
            if (IsNumber(wanted) && IsNumber(KeyOf(conversion.Operand)) && wanted.Shape != KeyOf(conversion.Operand).Shape)
                Emit(new ConvertNumber(wanted, false));
            void Call() => EmitOperator(converter, 1, conversion.Syntax, [conversion.Operand.Syntax]);
            if (IsLifted(conversion, converter))
                LiftedConversion(conversion.Type, Call);
            else
                Call();
            return;
        }

        if (conversion.Operand is IInterpolatedStringOperation text && conversion.Type?.Name is "FormattableString" or "IFormattable")
        {
            Emit(new MakeFormattable(Interpolate(text)));
            return;
        }

        CopiedOperand(conversion.Operand);
        if (IsNullable(conversion.Operand.Type) && conversion.Type is { IsValueType: true } && !IsNullable(conversion.Type))
            Emit(new TakeValue());
        var to = KeyOf(conversion);
        var from = KeyOf(conversion.Operand);
        if (conversion.Operand is IAnonymousFunctionOperation or IMethodReferenceOperation or ICollectionExpressionOperation || conversion.Operand.Type is null)
            return;
        if (IsNumber(to) && IsNumber(from))
        {
            if (Underlying(to).Shape != Underlying(from).Shape || to.Shape == TypeShape.Enum || from.Shape == TypeShape.Enum || to.Element?.Shape == TypeShape.Enum || from.Element?.Shape == TypeShape.Enum)
                Emit(new ConvertNumber(to, IsChecked(conversion)));
        }
        else if (IsOfItems(conversion))
        {
            Emit(new ConvertTuple(from, to));
        }
        else if (conversion.IsTryCast)
        {
            Emit(new CastReference(to, throws: false));
        }
        else if (!conversion.IsImplicit && to.IsReference && !conversion.Conversion.IsIdentity)
        {
            Emit(new CastReference(to, throws: true));
        }
        else if (conversion.GetConversion().IsUnboxing)
        {
            Emit(new Unbox(to));
        }
    }

    private void CopiedOperand(IOperation operand) => Value(operand);

    private static bool IsNumber(TypeKey type) => Underlying(type).Shape is >= TypeShape.Char and <= TypeShape.Decimal;

    private static TypeKey Underlying(TypeKey type) => type.Shape is TypeShape.Enum or TypeShape.Nullable && type.Element is { } element ? Underlying(element) : type;

    // A long sum is a deep one: its left operand is the sum of all but the last term.
    private void Binary(IBinaryOperation binary)
    {
        var sums = new Stack<IBinaryOperation>();
        IOperation left = binary;
        while (left is IBinaryOperation { ConstantValue.HasValue: false } sum && !IsJoinedText(sum))
        {
            sums.Push(sum);
            left = sum.LeftOperand;
        }

        Value(left);
        foreach (var sum in sums)
        {
            BeginSpan(sum.Syntax);
            Combine(sum);
            spans.Pop();
        }
    }

    /// <summary>Whether an operator is that of the framework's interfaces for numbers: what the numbers are decides what it does.</summary>
    private static bool IsGenericMaths(IMethodSymbol method) => method.ContainingType is { TypeKind: TypeKind.Interface, ContainingNamespace: { Name: "Numerics", ContainingNamespace.Name: "System" } };

    private bool IsRecordOfUser(IMethodSymbol method) => method.IsImplicitlyDeclared && method.ContainingType is { IsRecord: true } type && IsRead(type);

    /// <summary>The second condition is only asked when the first one doesn't decide.</summary>
    private void ShortCircuit(bool decidedBy, Action first, Action second)
    {
        var (decided, end) = (new JumpLabel(), new JumpLabel());
        first();
        Emit(new Branch(decided, decidedBy, Stops(end)));
        second();
        Emit(new Jump(end));
        Mark(decided);
        Emit(new PushConstant(decidedBy));
        Mark(end);
    }

    private void Unary(IUnaryOperation unary)
    {
        Value(unary.Operand);
        if (unary.OperatorMethod is { } method && !IsGenericMaths(method))
        {
            void Call() => EmitOperator(method, 1, unary.Syntax, [unary.Operand.Syntax], unary.ConstrainedToType);
            if (unary.IsLifted)
                Lifted(1, BinaryOperatorKind.None, Call);
            else
                Call();
            return;
        }

        if (unary.OperatorKind == UnaryOperatorKind.Hat)
            Emit(new MakeIndex());
        else
            Emit(new UnaryOperator(unary.OperatorKind, unary.IsChecked, KeyOf(unary)));
    }
}
