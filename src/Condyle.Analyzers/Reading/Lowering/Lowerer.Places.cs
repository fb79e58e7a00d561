using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>Places that are handed on: by <c>ref</c> and <c>out</c>, by functions that return them.</summary>
internal sealed partial class Lowerer
{
    /// <summary>A place that code works out: what a function returns by reference, one of two variables.</summary>
    private Target PlaceTarget(IOperation operation) => PlaceAt(() => Place(operation));

    private Target PlaceAt(Action push)
    {
        var place = Temporary();
        return new Target(
            () => { push(); Emit(new StoreSlot(place)); },
            () => Emit(new LoadThrough(place, isShared: false)),
            () => Emit(new StoreThrough(place, isShared: false)));
    }

    /// <summary>Whether a call gives back a place, not a value.</summary>
    private static bool IsPlace(IMethodSymbol? method) => method is { ReturnsByRef: true } or { ReturnsByRefReadonly: true };

    /// <summary>Whether a member of an extension block is handed the place of its receiver, to change what lies there.</summary>
    private static bool IsOnPlace(ISymbol member) => member is { IsStatic: false, ContainingType: { IsExtension: true, ExtensionParameter.RefKind: RefKind.Ref } };

    private static bool IsSpanIndexer(IPropertySymbol property) =>
        property is { IsIndexer: true, ReturnsByRef: true } or { IsIndexer: true, ReturnsByRefReadonly: true } && property.ContainingType.Name is "Span" or "ReadOnlySpan";

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
            case IParameterReferenceOperation { Parameter: { RefKind: RefKind.Ref, ContainingSymbol: INamedTypeSymbol { IsExtension: true } } }:
                Emit(new PushThis());
                break;
            case IParameterReferenceOperation { Parameter: { RefKind: RefKind.Ref or RefKind.Out } parameter }:
                LoadVariable(parameter, isReference: false);
                break;
            case IParameterReferenceOperation { Parameter: var parameter } when !IsPrimary(parameter) || slots.ContainsKey(parameter):
                Emit(new PushSlotCell(SlotOf(parameter), shared.Contains(parameter)));
                break;
            case IFieldReferenceOperation { Field: { IsStatic: false } vector } when TypeKeys.Of(vector.ContainingType).Shape == TypeShape.Numerics:
                CopyInAndOut(operation);
                break;
            case IFieldReferenceOperation { Field.IsStatic: false, Instance: { } instance, Field: var field }:
                Value(instance);
                Emit(new PushFieldCell(field.ContainingType.IsTupleType ? Members.ItemOf(field) : Members.IdOf(field)));
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
            case IInlineArrayAccessOperation element:
                Value(element.Instance);
                Value(element.Argument);
                Emit(new PushElementCell());
                break;
            case IImplicitIndexerReferenceOperation indexed:
                Value(indexed.Instance);
                Value(indexed.Argument);
                Emit(new PushElementCell());
                break;
            case IConditionalOperation { WhenFalse: { } other } choice:
                var (otherwise, end) = (new JumpLabel(), new JumpLabel());
                Condition(choice.Condition, otherwise, jumpWhen: false, end);
                KeptPlace(choice.WhenTrue);
                Emit(new Jump(end));
                Mark(otherwise);
                KeptPlace(other);
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

    /// <summary>Pushes a place that is kept. In a vector there is none: what the vector holds isn't known from there on.</summary>
    private void KeptPlace(IOperation operation)
    {
        if (operation is not IFieldReferenceOperation { Field.IsStatic: false, Instance: { } vector } || KeyOf(vector).Shape != TypeShape.Numerics)
        {
            Place(operation);
            return;
        }

        var owner = TargetOf(vector);
        owner.Prepare();
        Emit(new PushOpen(KeyOf(vector)));
        owner.Store();
        Emit(new PushConstant(OpenValue.Any));
    }

    // A vector is one value here, so its component is handed on as a copy, and written back after the call.
    private void CopyInAndOut(IOperation component)
    {
        var (target, copy) = (TargetOf(component), Temporary());
        target.Prepare();
        target.Load();
        Emit(new StoreSlot(copy));
        Emit(new PushSlotCell(copy, isShared: false));
        afterCall.Add(() =>
        {
            Emit(new LoadSlot(copy));
            target.Store();
        });
    }

    private void WriteBack(int first)
    {
        var pending = afterCall.GetRange(first, afterCall.Count - first);
        afterCall.RemoveRange(first, pending.Count);
        pending.ForEach(write => write());
    }
}
