using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>What can be assigned to: variables, fields, properties, elements.</summary>
internal sealed partial class Lowerer
{
    /// <param name="Prepare">Evaluates what comes before, once: a receiver, an index.</param>
    /// <param name="Load">Pushes what it holds.</param>
    /// <param name="Store">Stores the value on the stack.</param>
    private sealed record Target(Action Prepare, Action Load, Action Store);

    private Target TargetOf(IOperation? operation)
    {
        if (operation is null)
            return new Target(Nothing, () => Value(null), () => Emit(new Pop()));
        switch (operation)
        {
            case ILocalReferenceOperation { Local: var local }:
                return new Target(Nothing, () => LoadVariable(local, local.IsRef), () => StoreVariable(local, local.IsRef));
            case IParameterReferenceOperation { Parameter: var parameter }:
                return ParameterTarget(parameter);
            case IFieldReferenceOperation field:
                return FieldTarget(field);
            case IPropertyReferenceOperation property:
                return IsSpanIndexer(property.Property) || IsPlace(property.Property.GetMethod) ? PlaceTarget(property) : PropertyTarget(property);
            case IEventReferenceOperation { Event: var raised } reference when IsRead(raised.ContainingType):
                return raised.IsStatic
                    ? StaticTarget(raised.ContainingType, Members.IdOf(raised), keepsSeam: false)
                    : MemberTarget(reference.Instance, Members.IdOf(raised), KeyOf(reference));
            case IInvocationOperation call when IsPlace(call.TargetMethod):
                return PlaceTarget(call);
            case IConditionalOperation { IsRef: true } choice:
                return PlaceTarget(choice);
            case IImplicitIndexerReferenceOperation { Argument.Type.Name: "Index" } indexed:
                return ImplicitTarget(indexed);
            case IArrayElementReferenceOperation element:
                return ElementTarget(element);
            case IInstanceReferenceOperation { ReferenceKind: InstanceReferenceKind.ImplicitReceiver } when implicitReceivers.Count > 0:
                var made = implicitReceivers.Peek();
                return new Target(Nothing, () => Emit(new LoadSlot(made)), () => Emit(new StoreSlot(made)));
            case IDiscardOperation:
                return new Target(Nothing, () => Emit(new PushConstant(null)), () => Emit(new Pop()));
            case IDeclarationExpressionOperation { Expression: var declared }:
                return TargetOf(declared);
            case IParenthesizedOperation { Operand: var inner }:
                return TargetOf(inner);
            default:
                return new Target(
                    Nothing,
                    () => Emit(new Unread($"'{Shorten(operation.Syntax.ToString())}'", KeyOf(operation))),
                    () => { Emit(new Pop()); Emit(new Unread($"'{Shorten(operation.Syntax.ToString())}'", KeyOf(operation))); Emit(new Pop()); });
        }
    }

    private static void Nothing()
    {
    }

    private Target ElementTarget(IArrayElementReferenceOperation element)
    {
        var array = Temporary();
        var indices = element.Indices.Select(_ => Temporary()).ToList();
        var isPart = element.Indices is [{ Type.Name: "Range" }];
        return new Target(
            () =>
            {
                Hold(element.ArrayReference, array);
                for (var i = 0; i < indices.Count; i++)
                    Hold(element.Indices[i], indices[i]);
            },
            () => { Operands(); Emit(isPart ? new PartOf(KeyOf(element)) : new LoadElement(KeyOf(element), indices.Count)); },
            () =>
            {
                var value = Temporary();
                Emit(new StoreSlot(value));
                Operands();
                Emit(new LoadSlot(value));
                Emit(new StoreElement(indices.Count));
            });

        void Operands()
        {
            Emit(new LoadSlot(array));
            indices.ForEach(index => Emit(new LoadSlot(index)));
        }
    }

    private void Hold(IOperation? operation, int slot)
    {
        Value(operation);
        Emit(new StoreSlot(slot));
    }

    // The parameters of a primary constructor live as long as the object: they are fields of it.
    private Target ParameterTarget(IParameterSymbol parameter)
    {
        // The receiver of an extension block's members comes to them as an object's own.
        if (parameter.ContainingSymbol is INamedTypeSymbol { IsExtension: true })
            return new Target(Nothing, () => Emit(new PushThis()), () => Emit(new Pop()));
        if (IsPrimary(parameter) && !slots.ContainsKey(parameter))
        {
            var field = Members.FieldOf(parameter);
            var type = TypeKeys.Of(parameter.Type);
            return new Target(
                Nothing,
                () => { Emit(new PushThis()); Emit(new LoadField(field, type)); },
                () => StoreOnThis(field));
        }

        var isReference = parameter.RefKind is RefKind.Ref or RefKind.Out;
        return new Target(Nothing, () => LoadVariable(parameter, isReference), () => StoreVariable(parameter, isReference));
    }

    private void StoreOnThis(string field)
    {
        var value = Temporary();
        Emit(new StoreSlot(value));
        Emit(new PushThis());
        Emit(new LoadSlot(value));
        Emit(new StoreField(field));
    }

    private static bool IsPrimary(IParameterSymbol parameter) =>
        parameter.ContainingSymbol is IMethodSymbol { MethodKind: MethodKind.Constructor, DeclaringSyntaxReferences: [var declared] }
        && declared.GetSyntax() is TypeDeclarationSyntax;

    private Target FieldTarget(IFieldReferenceOperation reference)
    {
        var field = reference.Field;
        var type = KeyOf(reference);
        if (field.ContainingType.IsTupleType)
        {
            var item = field.ContainingType.TupleElements.IndexOf(field);
            if (item < 0)
                item = field.ContainingType.TupleElements.IndexOf(field.CorrespondingTupleField ?? field);
            if (item < 0 && int.TryParse(field.Name.Substring(Math.Min(4, field.Name.Length)), out var number))
                item = number - 1;
            return MemberTarget(reference.Instance, item.ToString(System.Globalization.CultureInfo.InvariantCulture), type);
        }

        var isUsers = IsRead(field.ContainingType);
        if (field.IsStatic)
        {
            return isUsers
                ? StaticTarget(field.ContainingType, Members.IdOf(field), keepsSeam: field.DeclaredAccessibility == Accessibility.Private)
                : new Target(Nothing, () => EmitFramework(field.ContainingType, "get_" + field.Name, type, 0, isStatic: true), () => Emit(new Pop()));
        }

        if (TypeKeys.Of(field.ContainingType).Shape == TypeShape.Numerics)
        {
            var owner = TargetOf(reference.Instance);
            var hasPlace = reference.Instance is ILocalReferenceOperation or IParameterReferenceOperation or IFieldReferenceOperation or IPropertyReferenceOperation or IArrayElementReferenceOperation
                or IInstanceReferenceOperation { ReferenceKind: InstanceReferenceKind.ImplicitReceiver };
            return new Target(
                hasPlace ? owner.Prepare : Nothing,
                () =>
                {
                    if (hasPlace)
                        owner.Load();
                    else
                        Value(reference.Instance);
                    Emit(new LoadField(field.Name, type));
                },
                () =>
                {
                    var value = Temporary();
                    Emit(new StoreSlot(value));
                    owner.Load();
                    Emit(new LoadSlot(value));
                    Emit(new SetComponent(field.Name));
                    owner.Store();
                });
        }

        return MemberTarget(reference.Instance, Members.IdOf(field), type);
    }

    private Target MemberTarget(IOperation? instance, string field, TypeKey type)
    {
        var owner = Temporary();
        return new Target(
            () => Hold(instance, owner),
            () => { Emit(new LoadSlot(owner)); Emit(new LoadField(field, type)); },
            () =>
            {
                var value = Temporary();
                Emit(new StoreSlot(value));
                Emit(new LoadSlot(owner));
                Emit(new LoadSlot(value));
                Emit(new StoreField(field));
            });
    }

    private Target StaticTarget(ITypeSymbol type, string field, bool keepsSeam)
    {
        var key = TypeKeys.Of(type);
        return new Target(Nothing, () => Emit(new LoadStatic(key, field, keepsSeam)), () => Emit(new StoreStatic(key, field)));
    }

    private Target PropertyTarget(IPropertyReferenceOperation reference)
    {
        var property = reference.Property;
        var type = KeyOf(reference);
        if (property.ContainingType.IsAnonymousType)
            return MemberTarget(reference.Instance, property.Name, type);
        if (IsRead(property.ContainingType) && Members.IsPlainAuto(property))
        {
            return property.IsStatic
                ? StaticTarget(property.ContainingType, Members.IdOf(property), keepsSeam: property.DeclaredAccessibility == Accessibility.Private)
                : MemberTarget(reference.Instance, Members.IdOf(property), type);
        }

        var owner = Temporary();
        var isBase = reference.Instance is IInstanceReferenceOperation { Syntax: BaseExpressionSyntax };
        var arguments = reference.Arguments.OrderBy(argument => argument.Parameter?.Ordinal ?? 0).ToList();
        var held = arguments.Select(_ => Temporary()).ToList();
        return new Target(
            () =>
            {
                if (!property.IsStatic)
                    Hold(reference.Instance, owner);
                foreach (var argument in reference.Arguments)
                    Hold(argument.Value, held[arguments.IndexOf(argument)]);
            },
            () =>
            {
                if (property.GetMethod is not { } getter)
                {
                    Emit(new PushOpen(type));
                    return;
                }

                Receiver();
                EmitCall(getter, held.Count, null, reference.Syntax, arguments.Select(argument => argument.Syntax), isBase, reference.ConstrainedToType);
            },
            () =>
            {
                var value = Temporary();
                Emit(new StoreSlot(value));
                if (property.SetMethod is not { } setter)
                {
                    // Only a constructor can set a property without a setter: its field.
                    Emit(new LoadSlot(owner));
                    Emit(new LoadSlot(value));
                    Emit(new StoreField(Members.IdOf(property)));
                    return;
                }

                Receiver();
                Emit(new LoadSlot(value));
                EmitCall(setter, held.Count + 1, null, reference.Syntax, [], isBase, reference.ConstrainedToType);
                Emit(new Pop());
            });

        void Receiver()
        {
            if (!property.IsStatic)
                Emit(new LoadSlot(owner));
            foreach (var slot in held)
                Emit(new LoadSlot(slot));
        }
    }

    /// <summary>A place that code works out: what a function returns by reference, one of two variables.</summary>
    private Target PlaceTarget(IOperation operation)
    {
        var place = Temporary();
        return new Target(
            () => { Place(operation); Emit(new StoreSlot(place)); },
            () => Emit(new LoadThrough(place, isShared: false)),
            () => Emit(new StoreThrough(place, isShared: false)));
    }

    /// <summary>Whether a call of the user's own gives back a place, not a value.</summary>
    private bool IsPlace(IMethodSymbol? method) => method is { ReturnsByRef: true } or { ReturnsByRefReadonly: true }
        && (method.MethodKind is MethodKind.LocalFunction or MethodKind.DelegateInvoke || (method.ContainingType is { } type && IsRead(type)));

    private static bool IsSpanIndexer(IPropertySymbol property) =>
        property is { IsIndexer: true, ReturnsByRef: true } or { IsIndexer: true, ReturnsByRefReadonly: true } && property.ContainingType.Name is "Span" or "ReadOnlySpan";

    private void Assign(ISimpleAssignmentOperation assignment)
    {
        var target = TargetOf(assignment.Target);
        target.Prepare();
        if (assignment.IsRef && VariableOf(assignment.Target) is { } variable)
        {
            Place(assignment.Value);
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

        var isText = assignment.OperatorKind == BinaryOperatorKind.Add && assignment.Type?.SpecialType == SpecialType.System_String;
        if (assignment.InConversion is { IsNumeric: true, IsIdentity: false })
            Emit(new ConvertNumber(KeyOf(assignment.Value), assignment.IsChecked));
        Value(isText ? Unconverted(assignment.Value) : assignment.Value);
        if (assignment.OperatorMethod is { } method && !isText && !IsGenericMaths(method))
            EmitCall(method, 2, null, assignment.Syntax, [], on: assignment.ConstrainedToType);
        else if (isText)
            Emit(new JoinText([new Hole(), new Hole()], Seams.Of(assignment.Value.Syntax, body.Path)));
        else
            Emit(new BinaryOperator(assignment.OperatorKind, assignment.IsChecked, KeyOf(assignment)) { IsLifted = assignment.IsLifted });
        if (assignment.OutConversion is { IsNumeric: true, IsIdentity: false })
            Emit(new ConvertNumber(KeyOf(assignment), assignment.IsChecked));
        Emit(new Duplicate());
        target.Store();
    }

    // An event with accessors of its own runs them; any other only keeps its handlers.
    private void Hook(IEventAssignmentOperation hooked)
    {
        if (hooked.EventReference is not IEventReferenceOperation { Event: var raised } reference || !IsRead(raised.ContainingType))
        {
            Value(hooked.HandlerValue);
            return;
        }

        if (!Members.IsPlainEvent(raised) && (hooked.Adds ? raised.AddMethod : raised.RemoveMethod) is { } accessor)
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
            EmitCall(method, 1, null, step.Syntax, [], on: step.ConstrainedToType);
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

    private void AssignParts(IDeconstructionAssignmentOperation assignment)
    {
        Value(assignment.Value);
        if (assignment.Type is { IsTupleType: false } || assignment.Value.Type is { IsTupleType: false })
            Emit(new PartsOf(KeyOf(assignment.Value)));
        else
            Emit(new CopyValue());
        Emit(new Duplicate());
        Deconstruct(assignment.Target);
    }

    private static ISymbol? VariableOf(IOperation operation) => operation switch
    {
        ILocalReferenceOperation local => local.Local,
        IParameterReferenceOperation parameter => parameter.Parameter,
        _ => null,
    };

    // An array's, a span's or a list's item counted from the end: what it has is asked once.
    private Target ImplicitTarget(IImplicitIndexerReferenceOperation indexed)
    {
        var (whole, index) = (Temporary(), Temporary());
        return new Target(
            () => { Hold(indexed.Instance, whole); Hold(indexed.Argument, index); },
            () => { Operands(); Emit(new PartOf(KeyOf(indexed))); },
            () =>
            {
                var value = Temporary();
                Emit(new StoreSlot(value));
                Operands();
                Emit(new LoadSlot(value));
                Emit(new StorePart());
            });

        void Operands()
        {
            Emit(new LoadSlot(whole));
            Emit(new LoadSlot(index));
        }
    }

    /// <summary>Stores the parts of the tuple on the stack in the targets of a deconstruction.</summary>
    private void Deconstruct(IOperation target) => Inside(target, DeconstructHere, leaves: -1);

    private void DeconstructHere(IOperation target)
    {
        if (target is IDeclarationExpressionOperation { Expression: var declared })
            target = declared;
        if (target is not ITupleOperation tuple)
        {
            var single = TargetOf(target);
            var value = Temporary();
            Emit(new StoreSlot(value));
            single.Prepare();
            Emit(new LoadSlot(value));
            single.Store();
            return;
        }

        Emit(new PartsOf(new TypeKey("tuple", TypeShape.Tuple)));
        Emit(new SplitTuple(tuple.Elements.Length));
        var parts = tuple.Elements.Select(_ => Temporary()).ToList();
        for (var i = parts.Count - 1; i >= 0; i--)
            Emit(new StoreSlot(parts[i]));
        for (var i = 0; i < parts.Count; i++)
        {
            Emit(new LoadSlot(parts[i]));
            Deconstruct(tuple.Elements[i]);
        }
    }

    /// <summary>Pushes the place that an argument by reference hands on.</summary>
    private void Place(IOperation operation)
    {
        switch (operation)
        {
            case ILocalReferenceOperation { Local: { IsRef: false } local }:
                Emit(new PushSlotCell(SlotOf(local), shared.Contains(local)));
                break;
            case ILocalReferenceOperation { Local: var local }:
                LoadVariable(local, isReference: false);
                break;
            case IParameterReferenceOperation { Parameter: { RefKind: RefKind.Ref or RefKind.Out } parameter }:
                LoadVariable(parameter, isReference: false);
                break;
            case IParameterReferenceOperation { Parameter: var parameter } when !IsPrimary(parameter) || slots.ContainsKey(parameter):
                Emit(new PushSlotCell(SlotOf(parameter), shared.Contains(parameter)));
                break;
            case IFieldReferenceOperation { Field.IsStatic: false, Instance: { } instance, Field: var field }:
                Value(instance);
                Emit(new PushFieldCell(Members.IdOf(field)));
                break;
            case IFieldReferenceOperation { Field: { IsStatic: true } field } when IsRead(field.ContainingType):
                Emit(new PushStaticCell(TypeKeys.Of(field.ContainingType), Members.IdOf(field)));
                break;
            case IArrayElementReferenceOperation element:
                Value(element.ArrayReference);
                foreach (var index in element.Indices)
                    Value(index);
                Emit(new PushElementCell(element.Indices.Length));
                break;
            case IPropertyReferenceOperation { Property: var property } reference when IsSpanIndexer(property) || IsPlace(property.GetMethod):
                Value(reference.Instance);
                foreach (var argument in reference.Arguments)
                    Value(argument.Value);
                if (IsSpanIndexer(property))
                    Emit(new PushElementCell());
                else
                    EmitCall(property.GetMethod!, reference.Arguments.Length, null, reference.Syntax, []);
                break;
            case IInvocationOperation call when IsPlace(call.TargetMethod):
                Invocation(call);
                break;
            case IImplicitIndexerReferenceOperation indexed:
                Value(indexed.Instance);
                Value(indexed.Argument);
                Emit(new PushElementCell());
                break;
            case IConditionalOperation { WhenFalse: { } other } choice:
                var (otherwise, end) = (new JumpLabel(), new JumpLabel());
                Condition(choice.Condition, otherwise, jumpWhen: false, end);
                Place(choice.WhenTrue);
                Emit(new Jump(end));
                Mark(otherwise);
                Place(other);
                Mark(end);
                break;
            case IDeclarationExpressionOperation { Expression: var declared }:
                Place(declared);
                break;
            case IDiscardOperation:
                Emit(new PushSlotCell(Temporary(), isShared: false));
                break;
            default:
                var held = Temporary();
                Hold(operation, held);
                Emit(new PushSlotCell(held, isShared: false));
                break;
        }
    }
}
