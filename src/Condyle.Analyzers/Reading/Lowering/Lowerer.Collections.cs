using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>Arrays and collection expressions.</summary>
internal sealed partial class Lowerer
{
    private void Array(IArrayCreationOperation array)
    {
        if (array.Initializer is { } initializer)
        {
            var count = 0;
            Items(initializer);
            Emit(new MakeArray(count, TypeKeys.Of((array.Type as IArrayTypeSymbol)?.ElementType), array.DimensionSizes.Length == 1 ? null : [.. LengthsOf(initializer)]));

            void Items(IArrayInitializerOperation row)
            {
                foreach (var value in row.ElementValues)
                {
                    if (value is IArrayInitializerOperation inner)
                    {
                        Items(inner);
                        continue;
                    }

                    CopiedValue(value);
                    count++;
                }
            }

            return;
        }

        foreach (var size in array.DimensionSizes)
            Value(size);
        Emit(new NewArray(TypeKeys.Of((array.Type as IArrayTypeSymbol)?.ElementType), array.DimensionSizes.Length));
    }

    // Memory of the stack is an array that only a span sees.
    private void OnStack(IOperation allocation)
    {
        var type = allocation.SemanticModel?.GetTypeInfo(allocation.Syntax);
        var item = ItemTypeOf(type?.ConvertedType ?? type?.Type) ?? TypeKeys.Of(null);
        var initializer = allocation.Syntax switch
        {
            StackAllocArrayCreationExpressionSyntax { Initializer: { } given } => given,
            ImplicitStackAllocArrayCreationExpressionSyntax { Initializer: var given } => given,
            _ => null,
        };
        if (initializer is not null)
        {
            // The last parts of the allocation are its items, each converted to the type of an item.
            var parts = allocation.ChildOperations.ToList();
            for (var i = parts.Count - initializer.Expressions.Count; i < parts.Count; i++)
                Value(parts.ElementAtOrDefault(i));
            Emit(new MakeArray(initializer.Expressions.Count, item));
        }
        else
        {
            Value(allocation.ChildOperations.FirstOrDefault());
            Emit(new NewArray(item));
        }

        Emit(new MakeSpan());
    }

    private static IEnumerable<int> LengthsOf(IArrayInitializerOperation? rows)
    {
        for (; rows is not null; rows = rows.ElementValues.FirstOrDefault() as IArrayInitializerOperation)
            yield return rows.ElementValues.Length;
    }

    private void Collection(ICollectionExpressionOperation collection)
    {
        var name = TypeKeys.PlainNameOf(collection.Type!);
        var made = collection.ConstructMethod;
        Gather(collection.Elements, ItemTypeOf(collection.Type), WrappingOf(collection, name));
        if (IsSpan(collection.Type))
            Emit(new MakeSpan());
        else if (made is { MethodKind: MethodKind.Ordinary, IsStatic: true })
            EmitCall(made, 1, null, collection.Syntax, []);
        else if (collection.Type is INamedTypeSymbol { TypeKind: not TypeKind.Interface } own && IsRead(own))
            FillOwn(own, made, collection);
        else if (name is "System.Collections.Generic.IList" or "System.Collections.Generic.ICollection")
            EmitFramework("System.Collections.Generic.List", KeyOf(collection));
        else if (made is not null)
            EmitFramework(name, KeyOf(collection));
    }

    // The items are taken one after another. Where it can be seen beforehand how many there are, what is spread is taken only before the items that follow the last of it.
    private void Gather(IReadOnlyList<IOperation> elements, TypeKey? itemType, Wrapping wrapping)
    {
        var isCounted = IsCounted(elements);
        var last = elements.Count - 1;
        while (last >= 0 && elements[last] is not ISpreadOperation)
            last--;
        var spreads = new List<bool>();
        for (var i = 0; i < elements.Count; i++)
        {
            var spread = elements[i] as ISpreadOperation;
            CopiedValue(spread?.Operand ?? elements[i]);
            spreads.Add(spread is not null);
            if (elements.Count == 1 || (isCounted ? i != last : spread is null))
                continue;
            var first = isCounted ? 0 : spreads.Count - 1;
            Emit(new GatherItems(spreads.GetRange(first, spreads.Count - first), itemType, Wrapping.None));
            spreads.RemoveRange(first, spreads.Count - first);
            spreads.Add(true);
        }

        Emit(new GatherItems(spreads, itemType, wrapping));
    }

    // The items lie in an array where it can be seen beforehand how many there are.
    private static Wrapping WrappingOf(ICollectionExpressionOperation collection, string name) =>
        name is not ("System.Collections.Generic.IEnumerable" or "System.Collections.Generic.IReadOnlyCollection" or "System.Collections.Generic.IReadOnlyList") ? Wrapping.None
        : IsCounted(collection.Elements) ? Wrapping.AroundArray
        : Wrapping.AroundList;

    private static bool IsCounted(IEnumerable<IOperation> elements) => elements.OfType<ISpreadOperation>().All(spread => spread.Operand.Type is { } type && IsCounted(type));

    private static bool IsCounted(ITypeSymbol type) => type is IArrayTypeSymbol
        || (type is INamedTypeSymbol named && Dispatch.BasesOf(named).SelectMany(candidate => candidate.GetMembers()).Any(member => member is IPropertySymbol { Name: "Length" or "Count", Type.SpecialType: SpecialType.System_Int32 }));

    private static TypeKey? ItemTypeOf(ITypeSymbol? type) => type switch
    {
        IArrayTypeSymbol array => TypeKeys.Of(array.ElementType),
        INamedTypeSymbol { TypeArguments: [var argument] } => TypeKeys.Of(argument),
        _ => null,
    };

    // A collection of the user's own is made empty, and each item added.
    private void FillOwn(INamedTypeSymbol type, IMethodSymbol? constructor, ICollectionExpressionOperation collection)
    {
        var add = Dispatch.BasesOf(type).SelectMany(candidate => candidate.GetMembers("Add")).OfType<IMethodSymbol>().FirstOrDefault(method => method.Parameters.Length == 1);
        if (constructor is null || add is null)
        {
            Emit(new Unread(Quoted(collection.Syntax), KeyOf(collection)));
            return;
        }

        var (items, made, enumerator) = (Temporary(), Temporary(), Temporary());
        var (head, exit) = (new JumpLabel(), new JumpLabel());
        Emit(new StoreSlot(items));
        Emit(new NewUserObject(TypeKeys.MethodOf(constructor), TypeKeys.Of(type), 0, null));
        Emit(new StoreSlot(made));
        Emit(new LoadSlot(items));
        Emit(new StartEnumeration(enumerator, ofPlaces: false));
        Mark(head);
        Emit(new NextItem(enumerator, TypeKeys.Of(add.Parameters[0].Type), Stops(head, exit)));
        var item = Temporary();
        Emit(new StoreSlot(item));
        Emit(new LoadSlot(made));
        Emit(new LoadSlot(item));
        EmitCall(add, 1, null, collection.Syntax, []);
        Emit(new Pop());
        Emit(new Jump(head));
        Mark(exit);
        Emit(new LoadSlot(made));
    }

    private static bool IsSpan(ITypeSymbol? type) => type?.OriginalDefinition is { Name: "Span" or "ReadOnlySpan", ContainingNamespace.Name: "System" };
}
