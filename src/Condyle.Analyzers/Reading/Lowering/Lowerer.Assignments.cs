using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>Assignments of every kind.</summary>
internal sealed partial class Lowerer
{
    private void Assign(ISimpleAssignmentOperation assignment)
    {
        var target = TargetOf(assignment.Target);
        target.Prepare();
        if (assignment.IsRef && VariableOf(assignment.Target) is { } variable)
        {
            KeptPlace(assignment.Value);
            StoreVariable(variable, isReference: false);
            LoadVariable(variable, isReference: true);
            return;
        }

        CopiedValue(assignment.Value);
        Emit(new Duplicate());
        target.Store();
    }

    private void AssignCompound(ICompoundAssignmentOperation assignment)
    {
        if (assignment.OperatorMethod is { } extending && IsOnPlace(extending))
        {
            OnPlace(assignment.Target, extending, assignment.Value, assignment.Syntax);
            return;
        }

        var target = TargetOf(assignment.Target);
        target.Prepare();
        target.Load();
        if (assignment.OperatorMethod is { IsStatic: false } own)
        {
            // An operator that changes its operand where it lies.
            Value(assignment.Value);
            EmitCall(own, 1, null, assignment.Syntax, []);
            Emit(new Pop());
            target.Load();
            return;
        }

        var isText = assignment.OperatorKind == BinaryOperatorKind.Add && assignment is { Type.SpecialType: SpecialType.System_String, OperatorMethod: null or { ContainingType.SpecialType: SpecialType.System_String } };
        if (IsOfNumbers(assignment.InConversion, assignment))
            Emit(new ConvertNumber(KeyOf(assignment.Value), assignment.IsChecked));
        Value(isText ? Unconverted(assignment.Value) : assignment.Value);
        if (assignment.OperatorMethod is { } method && !isText && !IsGenericMaths(method))
        {
            void Call() => EmitCall(method, 2, null, assignment.Syntax, [], on: assignment.ConstrainedToType);
            if (assignment.IsLifted)
                Lifted(2, BinaryOperatorKind.None, Call);
            else
                Call();
        }
        else if (isText)
            Emit(new JoinText([new Hole(), new Hole()], Seams.Of(assignment.Value.Syntax, body.Path)));
        else
            Emit(new BinaryOperator(assignment.OperatorKind, assignment.IsChecked, KeyOf(assignment)) { IsLifted = assignment.IsLifted });
        if (IsOfNumbers(assignment.OutConversion, assignment))
            Emit(new ConvertNumber(KeyOf(assignment), assignment.IsChecked));
        Emit(new Duplicate());
        target.Store();
    }

    // An operator of an extension block changes a structure where it lies.
    private void OnPlace(IOperation target, IMethodSymbol changed, IOperation? operand, SyntaxNode syntax)
    {
        var place = Temporary();
        Place(target);
        Emit(new StoreSlot(place));
        Emit(new LoadSlot(place));
        if (operand is not null)
            Value(operand);
        EmitCall(changed, changed.Parameters.Length, null, syntax, []);
        Emit(new Pop());
        Emit(new LoadThrough(place, isShared: false));
    }

    // Of numbers that may be missing it is one as well.
    private static bool IsOfNumbers(CommonConversion conversion, ICompoundAssignmentOperation assignment) =>
        conversion is { Exists: true, IsIdentity: false, MethodSymbol: null } && IsNumber(KeyOf(assignment)) && IsNumber(KeyOf(assignment.Value));

    // An event with accessors of its own, or of whoever is behind it, runs them; any other only keeps its handlers.
    private void Hook(IEventAssignmentOperation hooked)
    {
        if (hooked.EventReference is not IEventReferenceOperation { Event: var raised } reference)
        {
            Value(hooked.HandlerValue);
            return;
        }

        if ((!IsRead(raised.ContainingType) || !Members.IsOnlyField(raised)) && (hooked.Adds ? raised.AddMethod : raised.RemoveMethod) is { } accessor)
        {
            if (!raised.IsStatic)
                Value(reference.Instance);
            Value(hooked.HandlerValue);
            EmitCall(accessor, 1, null, hooked.Syntax, []);
            return;
        }

        var target = TargetOf(reference);
        target.Prepare();
        target.Load();
        Value(hooked.HandlerValue);
        Emit(new BinaryOperator(hooked.Adds ? BinaryOperatorKind.Add : BinaryOperatorKind.Subtract, false, KeyOf(hooked.HandlerValue)));
        Emit(new Duplicate());
        target.Store();
    }

    private static IOperation Unconverted(IOperation operation) =>
        operation is IConversionOperation { IsImplicit: true, OperatorMethod: null, Operand: var plain } ? plain : operation;

    private void AssignIfNull(ICoalesceAssignmentOperation assignment)
    {
        var end = new JumpLabel();
        var target = TargetOf(assignment.Target);
        target.Prepare();
        target.Load();
        Emit(new Duplicate());
        Emit(new NullTest());
        Emit(new Branch(end, false, Stops(end)));
        Emit(new Pop());
        CopiedValue(assignment.Value);
        Emit(new Duplicate());
        target.Store();
        Mark(end);
    }

    private void Step(IIncrementOrDecrementOperation step)
    {
        if (step.OperatorMethod is { } extending && IsOnPlace(extending))
        {
            OnPlace(step.Target, extending, null, step.Syntax);
            return;
        }

        var target = TargetOf(step.Target);
        target.Prepare();
        target.Load();
        if (step.OperatorMethod is { IsStatic: false } own)
        {
            EmitCall(own, 0, null, step.Syntax, []);
            Emit(new Pop());
            target.Load();
            return;
        }

        if (step.IsPostfix)
            Emit(new Duplicate());
        var type = KeyOf(step.Target);
        var kind = step.Kind == OperationKind.Increment ? BinaryOperatorKind.Add : BinaryOperatorKind.Subtract;
        if (step.OperatorMethod is { } method && !IsGenericMaths(method))
        {
            void Call() => EmitCall(method, 1, null, step.Syntax, [], on: step.ConstrainedToType);
            if (step.IsLifted)
                Lifted(1, BinaryOperatorKind.None, Call);
            else
                Call();
        }
        else
        {
            Emit(new PushConstant(NumberConversions.Convert(1, Underlying(type).Shape, false)));
            Emit(new BinaryOperator(kind, step.IsChecked, type) { IsLifted = step.IsLifted });
            if (IsNumber(type))
                Emit(new ConvertNumber(type, step.IsChecked));
        }

        if (!step.IsPostfix)
            Emit(new Duplicate());
        target.Store();
    }

    private static ISymbol? VariableOf(IOperation operation) => operation switch
    {
        ILocalReferenceOperation local => local.Local,
        IParameterReferenceOperation parameter => parameter.Parameter,
        _ => null,
    };
}
