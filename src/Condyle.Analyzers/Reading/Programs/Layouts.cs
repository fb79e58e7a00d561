using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reading;

/// <summary>Works out which fields the objects of a type have, those of its bases included.</summary>
internal static class Layouts
{
    public static UserType Of(INamedTypeSymbol type, string id)
    {
        var fields = new List<string>();
        var types = new List<TypeKey?>();
        if (InlineLengthOf(type) is { } length)
        {
            // Its one field stands for all the items.
            var item = TypeKeys.Of(type.GetMembers().OfType<IFieldSymbol>().FirstOrDefault(field => !field.IsStatic)?.Type);
            return new UserType(id, [.. Enumerable.Range(0, length).Select(index => $"[{index}]")], [.. Enumerable.Repeat<TypeKey?>(item, length)], isStruct: true, comparesByParts: true) { Name = type.Name, IsInlineArray = true, Parameters = [.. TypeKeys.ParametersOf(type)] };
        }

        for (var candidate = type; candidate is not null && TypeKeys.IsOfUser(candidate) && SymbolEqualityComparer.Default.Equals(candidate.ContainingAssembly, type.ContainingAssembly); candidate = candidate.BaseType)
        {
            foreach (var field in candidate.GetMembers().OfType<IFieldSymbol>().Where(field => !field.IsStatic && !field.IsConst))
                Add(Members.IdOf(field), field.Type);

            foreach (var raised in candidate.GetMembers().OfType<IEventSymbol>().Where(raised => !raised.IsStatic && Members.IsPlainEvent(raised)))
                Add(Members.IdOf(raised), raised.Type);
            foreach (var parameter in BodySource.PrimaryConstructorOf(candidate)?.Parameters ?? [])
                Add(Members.FieldOf(parameter), parameter.Type);
        }

        if (Dispatch.BasesOf(type).Any(candidate => TypeKeys.PlainNameOf(candidate) == "System.Exception"))
            Add(ExceptionValue.BaseField, null);
        var collection = CollectionOf(type);
        if (collection is not null)
            Add(ObjectValue.CollectionField, null);
        return new UserType(id, fields, types, type.IsValueType, type.IsRecord || type.IsValueType)
        {
            Name = type.Name,
            Collection = collection is null ? null : TypeKeys.Of(collection),
            Parameters = [.. TypeKeys.ParametersOf(type)],
            BaseArguments = [.. Dispatch.BasesOf(type).Skip(1).SelectMany(above => TypeKeys.ParametersOf(above).Zip(TypeKeys.ArgumentsOf(above), (parameter, argument) => new KeyValuePair<string, TypeKey>(parameter, argument)))],
        };

        void Add(string field, ITypeSymbol? of)
        {
            if (fields.Contains(field))
                return;
            fields.Add(field);
            types.Add(TypeKeys.Of(of));
        }
    }

    // The generic ones have no members that a type may override.
    private static INamedTypeSymbol? CollectionOf(INamedTypeSymbol type) => Dispatch.BasesOf(type).FirstOrDefault(candidate =>
        candidate is { TypeKind: TypeKind.Class, IsGenericType: true } && TypeKeys.PlainNameOf(candidate) is var name
        && name.StartsWith(CollectionValue.Generic, StringComparison.Ordinal) && FrameworkTable.Find(name, ".ctor") is not null);

    private static int? InlineLengthOf(INamedTypeSymbol type) =>
        type.GetAttributes().FirstOrDefault(attribute => attribute.AttributeClass?.Name == "InlineArrayAttribute") is { ConstructorArguments: [{ Value: int length and > 0 and <= Limits.Items }] } ? length : null;

    public static UserType StaticsOf(INamedTypeSymbol type, string id)
    {
        var own = type.GetMembers().OfType<IFieldSymbol>().Where(field => field is { IsStatic: true, IsConst: false }).ToList();
        var fields = own.Select(field => (Id: Members.IdOf(field), field.Type))
            .Concat(type.GetMembers().OfType<IEventSymbol>().Where(raised => raised.IsStatic && Members.IsPlainEvent(raised)).Select(raised => (Id: Members.IdOf(raised), raised.Type)))
            .GroupBy(field => field.Id).Select(group => group.First()).ToList();
        return new UserType(id, [.. fields.Select(field => field.Id)], [.. fields.Select(field => (TypeKey?)TypeKeys.Of(field.Type))], false, false)
        {
            Name = type.Name,
        };
    }
}
