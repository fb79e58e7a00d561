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
    private sealed record Target(Action Prepare, Action Load, Action Store)
    {
        /// <summary>Pushes what it holds where nothing is stored afterwards, so that what comes before needn't be kept.</summary>
        public Action? Read { get; init; }
    }

    private readonly List<Action> afterCall = [];

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
                return ElementTarget(element, element.ArrayReference, element.Indices);
            case IInlineArrayAccessOperation element:
                return ElementTarget(element, element.Instance, [element.Argument]);
            case IInstanceReferenceOperation { ReferenceKind: InstanceReferenceKind.ImplicitReceiver } when implicitReceivers.Count > 0:
                var made = implicitReceivers.Peek();
                return new Target(Nothing, () => Emit(new LoadSlot(made)), () => Emit(new StoreSlot(made)));
            case IInstanceReferenceOperation { ReferenceKind: InstanceReferenceKind.ContainingTypeInstance, Type.IsValueType: true }:
                return new Target(Nothing, () => Emit(new PushThis()), () => Emit(new StoreThis()));
            case IDiscardOperation:
                return new Target(Nothing, () => Emit(new PushConstant(null)), () => Emit(new Pop()));
            case IDeclarationExpressionOperation { Expression: var declared }:
                return TargetOf(declared);
            case IParenthesizedOperation { Operand: var inner }:
                return TargetOf(inner);
            default:
                return new Target(
                    Nothing,
                    () => Emit(new Unread(Quoted(operation.Syntax), KeyOf(operation))),
                    () => { Emit(new Pop()); Emit(new Unread(Quoted(operation.Syntax), KeyOf(operation))); Emit(new Pop()); });
        }
    }

    private static void Nothing()
    {
    }

    private Target ElementTarget(IOperation element, IOperation whole, IReadOnlyList<IOperation> at)
    {
        var array = Temporary();
        var indices = at.Select(_ => Temporary()).ToList();
        var isPart = at is [{ Type.Name: "Range" }];
        return new Target(
            () =>
            {
                Hold(whole, array);
                for (var i = 0; i < indices.Count; i++)
                    Hold(at[i], indices[i]);
            },
            () => { Operands(); Emit(isPart ? new PartOf(KeyOf(element)) : new LoadElement(KeyOf(element), indices.Count)); },
            () =>
            {
                var value = Temporary();
                Emit(new StoreSlot(value));
                Operands();
                Emit(new LoadSlot(value));
                Emit(new StoreElement(indices.Count));
            })
        {
            Read = () =>
            {
                Value(whole);
                foreach (var index in at)
                    Value(index);
                Emit(isPart ? new PartOf(KeyOf(element)) : new LoadElement(KeyOf(element), at.Count));
            },
        };

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
        if (parameter is { RefKind: RefKind.Ref, ContainingSymbol: INamedTypeSymbol { IsExtension: true } })
            return PlaceAt(() => Emit(new PushThis()));
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
            return MemberTarget(reference.Instance, Members.ItemOf(field), type);
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
            var hasPlace = HasPlace(reference.Instance);
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

    private static bool HasPlace(IOperation? instance) =>
        instance is ILocalReferenceOperation or IParameterReferenceOperation or IFieldReferenceOperation or IPropertyReferenceOperation or IArrayElementReferenceOperation
            or IInstanceReferenceOperation { ReferenceKind: InstanceReferenceKind.ImplicitReceiver };

    // Setting a property of a vector or matrix makes another one, which takes the place of the first.
    private Target ChangedTarget(IPropertyReferenceOperation reference, IMethodSymbol setter)
    {
        var owner = TargetOf(reference.Instance);
        var held = reference.Arguments.Select(_ => Temporary()).ToList();
        return new Target(
            () =>
            {
                owner.Prepare();
                for (var i = 0; i < held.Count; i++)
                    Hold(reference.Arguments[i].Value, held[i]);
            },
            () =>
            {
                owner.Load();
                held.ForEach(slot => Emit(new LoadSlot(slot)));
                if (reference.Property.GetMethod is { } getter)
                    EmitCall(getter, held.Count, null, reference.Syntax, []);
            },
            () =>
            {
                var value = Temporary();
                Emit(new StoreSlot(value));
                owner.Load();
                held.ForEach(slot => Emit(new LoadSlot(slot)));
                Emit(new LoadSlot(value));
                var changed = TypeKeys.MethodOf(setter) with { Returns = TypeKeys.Of(setter.ContainingType) };
                Emit(new FrameworkCall(changed, held.Count + 1, null, hasReceiver: true));
                owner.Store();
            });
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
            })
        {
            Read = () => { Value(instance); Emit(new LoadField(field, type)); },
        };
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

        if (TypeKeys.Of(property.ContainingType).Shape == TypeShape.Numerics && property.SetMethod is { IsStatic: false } changer && HasPlace(reference.Instance))
            return ChangedTarget(reference, changer);

        var owner = Temporary();
        var isBase = reference.Instance is IInstanceReferenceOperation { Syntax: BaseExpressionSyntax };
        var arguments = reference.Arguments.OrderBy(argument => argument.Parameter?.Ordinal ?? 0).ToList();
        var held = arguments.Select(_ => Temporary()).ToList();
        return new Target(
            () =>
            {
                if (IsOnPlace(property))
                {
                    Place(reference.Instance!);
                    Emit(new StoreSlot(owner));
                }
                else if (!property.IsStatic)
                {
                    Hold(reference.Instance, owner);
                }

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
            })
        {
            Read = arguments.Count <= 1 && property.GetMethod is { } asked ? () => Ask(asked) : null,
        };

        void Ask(IMethodSymbol getter)
        {
            if (IsOnPlace(property))
                Place(reference.Instance!);
            else if (!property.IsStatic)
                Value(reference.Instance);
            foreach (var argument in arguments)
                Value(argument.Value);
            EmitCall(getter, arguments.Count, null, reference.Syntax, arguments.Select(argument => argument.Syntax), isBase, reference.ConstrainedToType);
        }

        void Receiver()
        {
            if (!property.IsStatic)
                Emit(new LoadSlot(owner));
            foreach (var slot in held)
                Emit(new LoadSlot(slot));
        }
    }
}
